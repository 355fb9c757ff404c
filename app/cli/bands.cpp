#include "app/cli/command.h"
namespace lobewright::cli {}
