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
/// Asks for a printer; on paper the light tones, whatever the screen shows.
void printPicture(QWidget& view, const QString& title);
/// The numbers behind the view to the clipboard, columns between tabs.
void copyData(QWidget& view);
/// Asks for a file.
void saveData(QWidget& view, const QString& title);
/// False when the file cannot be written. RFC 4180.
bool writeData(QWidget& view, const QString& file);
/// Entries for all of them; those for numbers only where there are some.
void addPictureActions(QMenu& menu, QWidget& view, const QString& title);

} // namespace lobewright::ui
