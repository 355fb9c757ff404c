#pragma once

#include "tests/ui/desktop_fixture.h"

#include <QDialog>
#include <QTimer>

#include <functional>
#include <vector>

namespace lobewright::ui::test {

QByteArray contents(const QString& file);
void write(const QString& file, const QByteArray& bytes);
/// Triggers the action of this text wherever in the menus it is.
void trigger(MainWindow& window, const QString& text);

/// Answers the dialogs that open one after another, each with its act, which ends it.
class DialogSeries {
  public:
    explicit DialogSeries(std::vector<std::function<void(QDialog&)>> acts);
    /// All of them opened.
    bool waitUntilOver();

  private:
    std::vector<std::function<void(QDialog&)>> acts_;
    std::size_t next_ = 0;
    QTimer timer_;
};

/// Acts: types a name and presses Return; does not agree, or agrees, to a question (its words).
void typeFile(QDialog& dialog, const QString& file);
QString refuse(QDialog& dialog);
QString agree(QDialog& dialog);

} // namespace lobewright::ui::test
