#pragma once

#include <QString>

class QMenu;
class QWidget;

/// Pictures of a view as it stands on the screen, with its names and values.
namespace lobewright::ui {

/// To the clipboard, at twice the screen's resolution.
void copyPicture(QWidget& view);
/// Asks for a file; PNG, SVG or PDF by its ending.
void savePicture(QWidget& view, const QString& title);
/// False when the file cannot be written. PNG, SVG or PDF by its ending.
bool writePicture(QWidget& view, const QString& title, const QString& file);
void printPicture(QWidget& view, const QString& title);
/// Entries for the three of them.
void addPictureActions(QMenu& menu, QWidget& view, const QString& title);

} // namespace lobewright::ui
