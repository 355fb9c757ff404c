#pragma once

#include "core/result.h"

#include <QByteArray>
#include <QString>

#include <optional>

namespace lobewright::ui {

/// Writes a file as the whole program does (files::writeFile): all of it or none, links and rights
/// kept. Returns the problem, if any.
std::optional<Problem> saveBytes(const QString& file, const QByteArray& bytes);

} // namespace lobewright::ui
