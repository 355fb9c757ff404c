#pragma once

#include <QMessageBox>

namespace lobewright::ui {

/// A message box that shows its words as they are: names of files and titles of designs come from
/// strangers and must not act as markup.
class PlainMessage : public QMessageBox {
    Q_OBJECT

  public:
    PlainMessage(Icon icon, const QString& title, const QString& text, StandardButtons buttons,
                 QWidget* parent);
};

/// A tooltip that shows its words as they are, broken into lines.
QString plainToolTip(const QString& text);

/// Says something that went wrong and waits until it is read.
void warn(QWidget* parent, const QString& title, const QString& text);

} // namespace lobewright::ui
