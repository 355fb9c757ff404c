#pragma once

#include "core/result.h"

#include <QString>

class QWidget;

/// The small windows of the program.
namespace lobewright::ui {

/// What the program is, its licence, and the cautions that go with every estimate.
void showAbout(QWidget* parent);
/// Why a file cannot be used: every problem with its place in the file.
void showProblems(QWidget* parent, const QString& file, const Problems& problems);

/// The cautions as paragraphs, the same wherever they are shown.
QString cautions();

} // namespace lobewright::ui
