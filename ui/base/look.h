#pragma once

#include <QIcon>
#include <QString>

class QApplication;
class QWidget;

namespace lobewright::ui {

enum class Theme { system, light, dark };

/// "system", "light", "dark"; unknown text: system.
Theme themeNamed(const QString& name);
QString nameOf(Theme theme);

/// Gives the whole program its style and tones. May be called again to change the theme.
void applyLook(QApplication& application, Theme theme);

/// The program's own icon.
QIcon programIcon();

/// A line icon of ours in the ink of the widget that shows it; empty when there is none of that
/// name. Names: the files of resources/icons/actions, e.g. "play", "undo".
QIcon actionIcon(const QString& name, const QWidget& widget);

} // namespace lobewright::ui
