#pragma once

#include <QString>

namespace lobewright::ui {

/// Where file dialogs begin: the folder of the file opened or written last while it is still there,
/// else the person's documents, else home.
QString lastFolder();
void noteFolder(const QString& file);

/// "biogas-pump-set": a name of a design as the beginning of a file's.
QString fileStem(const QString& name);

} // namespace lobewright::ui
