#pragma once

#include <QStringList>

class QWidget;

/// The one place that asks where something is to be written, and whether it may replace what is
/// there.
namespace lobewright::ui {

/// True when none of the files exists, or the person agrees that those which do are replaced.
bool mayReplace(QWidget* parent, const QStringList& files);

/// The file that the person chooses, as it will be written: with the ending of the kind chosen in
/// `filter` unless it has one of those listed there, and after agreeing that it replaces what is
/// there. Who does not agree chooses again. Empty: nothing is to be written.
/// `filter` is as in QFileDialog, the usual kind first.
QString fileToWrite(QWidget* parent, const QString& caption, const QString& proposed,
                    const QString& filter);

/// The same name with the ending of the kind `chosen`, unless it ends as one of the kinds of
/// `filter`. Where every file is accepted ("*"), any ending does.
QString withEnding(const QString& file, const QString& filter, const QString& chosen);

} // namespace lobewright::ui
