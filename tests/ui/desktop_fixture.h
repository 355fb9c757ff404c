#pragma once

#include "ui/window/main_window.h"

#include <QDialog>
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include <functional>
#include <memory>

namespace lobewright::ui::test {

/// The first sample of the program, as its file states it.
design::Design sampleDesign();

/// The real window on the first sample, solved, with a recovery folder of its own.
class WindowTest : public ::testing::Test {
  protected:
    void SetUp() override;

    QString fileIn(const QString& name) const { return folder_.filePath(name); }
    /// False when the present design is not solved within a minute.
    bool waitUntilSolved();
    /// Gives the window the focus. False: not within some seconds.
    bool activate();
    /// The value of a number of the present design, in the unit of the file.
    double number(const std::string& path) const;
    QWidget& view(const QString& key);
    /// Opened if it is not in sight yet.
    template <class Plot>
    Plot& shown(const char* key) {
        open(key);
        auto* plot = dynamic_cast<Plot*>(&view(QString::fromLatin1(key)));
        EXPECT_TRUE(plot && plot->isVisible());
        return *plot;
    }
    void open(const char* key);
    /// Brings the tab with the list of figures to the front, which fills it.
    FiguresPanel& shownFigures();

    QTemporaryDir folder_;
    std::unique_ptr<MainWindow> window_;
};

/// Presses at `from`, moves in steps to `to`, and releases if wanted.
void drag(QWidget& widget, const QPointF& from, const QPointF& to, bool release = true,
          Qt::KeyboardModifiers modifiers = Qt::NoModifier);

/// Calls `act` with the modal dialog that opens next, then closes it.
void onNextDialog(std::function<void(QDialog&)> act);

} // namespace lobewright::ui::test
