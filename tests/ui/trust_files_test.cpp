// What is written where: nothing that is there is replaced unasked.
#include "tests/ui/trust_dialogs.h"
#include "ui/base/file_to_write.h"
#include "ui/claims/claims_pane.h"
#include "ui/dialogs/export_dialog.h"
#include "ui/plots/base/plot_export.h"
#include "ui/window/frames_dialog.h"

#include <QAction>
#include <QComboBox>
#include <QDir>
#include <QFileDialog>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>

namespace lobewright::ui::test {
namespace {

constexpr auto before = "somebody's work";

/// One way of writing a file: what is typed, what the file is called then, and how it begins.
struct Writing {
    QString typed, written;
    std::function<void()> begin;
};

class NothingReplacedUnasked : public WindowTest {
  protected:
    void put(const QString& name) { write(fileIn(name), before); }

    /// Types a name whose final form is there, and does not agree.
    void expectAsked(const Writing& writing) {
        put(writing.written);
        QString asked;
        DialogSeries dialogs({
            [&](QDialog& dialog) { typeFile(dialog, fileIn(writing.typed)); },
            [&](QDialog& dialog) { asked = refuse(dialog); },
            [](QDialog& dialog) { dialog.reject(); }, // the question where, again
        });
        writing.begin();
        ASSERT_TRUE(dialogs.waitUntilOver()) << writing.written.toStdString();
        EXPECT_TRUE(asked.contains(writing.written)) << asked.toStdString();
        QTest::qWait(100);
        EXPECT_EQ(contents(fileIn(writing.written)), before) << writing.written.toStdString();
    }
    /// The same, and agrees.
    void expectReplaced(const Writing& writing) {
        put(writing.written);
        DialogSeries dialogs({
            [&](QDialog& dialog) { typeFile(dialog, fileIn(writing.typed)); },
            [&](QDialog& dialog) { agree(dialog); },
        });
        writing.begin();
        EXPECT_TRUE(dialogs.waitUntilOver());
        EXPECT_TRUE(
            QTest::qWaitFor([&] { return contents(fileIn(writing.written)) != before; }, 60000))
            << writing.written.toStdString();
    }
    ClaimsPane& claims() { return dynamic_cast<ClaimsPane&>(view("claims")); }
};

TEST_F(NothingReplacedUnasked, DesignAndReport) {
    const Writing design{"mine", "mine.lobewright.json", [&] { trigger(*window_, "Save &as…"); }};
    expectAsked(design);
    expectReplaced(design);
    const Writing report{"mine", "mine.pdf", [&] { trigger(*window_, "&Report…"); }};
    expectAsked(report);
    expectReplaced(report);
}

TEST_F(NothingReplacedUnasked, PicturesAndDataOfPlots) {
    QWidget& plot = view("section");
    const Writing picture{"plot", "plot.png", [&] { savePicture(plot, "plot"); }};
    expectAsked(picture);
    expectReplaced(picture);
    const Writing data{"plot", "plot.csv", [&] { saveData(view("pressure-volume"), "plot"); }};
    expectAsked(data);
    expectReplaced(data);
}

TEST_F(NothingReplacedUnasked, ClaimsAndFindings) {
    window_->arrange("claims");
    claims().fillInExample();
    const auto pressSave = [&] {
        for (auto* button : claims().findChildren<QAbstractButton*>()) {
            if (button->text() == QStringLiteral("Save…"))
                button->click();
        }
    };
    const Writing form{"leaflet", "leaflet.claims.json", pressSave};
    expectAsked(form);
    expectReplaced(form);
    QMenu options;
    claims().addOptions(options);
    const Writing findings{"findings", "findings.pdf", [&] {
                               for (QAction* action : options.actions()) {
                                   if (action->text() == QStringLiteral("&Save the findings…"))
                                       action->trigger();
                               }
                           }};
    expectAsked(findings);
    expectReplaced(findings);
}

TEST_F(NothingReplacedUnasked, ExportedTrack) {
    ExportDialog dialog(window_->document().design(), "mine");
    dialog.show();
    auto& kind = *dialog.findChild<QComboBox*>("kind");
    kind.setCurrentIndex(kind.findData(static_cast<int>(exchange::ExportKind::liftTable)));
    auto* go = dialog.findChild<QPushButton*>("go");
    const Writing track{"table", "table.csv", [&] { go->click(); }};
    expectAsked(track);
    expectReplaced(track);
}

TEST_F(NothingReplacedUnasked, ResultsAndPicturesOverATurn) {
    const auto folderOf = [&](QDialog& dialog) { typeFile(dialog, folder_.path()); };
    put("summary.json");
    QString asked;
    {
        DialogSeries dialogs({folderOf, [&](QDialog& dialog) { asked = refuse(dialog); }});
        trigger(*window_, "&Export results…");
        ASSERT_TRUE(dialogs.waitUntilOver());
    }
    EXPECT_TRUE(asked.contains("summary.json")) << asked.toStdString();
    EXPECT_EQ(contents(fileIn("summary.json")), before);

    FramesDialog frames(window_->views(), window_->cursor(), "mine", QString(), window_.get());
    frames.show();
    frames.findChild<QSpinBox*>("frames")->setValue(3);
    const QString picture =
        "mine-" + frames.findChild<QComboBox*>("drawing")->currentData().toString() + "-0002.png";
    put(picture);
    {
        DialogSeries dialogs({folderOf, [&](QDialog& dialog) { asked = refuse(dialog); }});
        for (auto* button : frames.findChildren<QPushButton*>()) {
            if (button->text().contains("Write to a folder"))
                button->click();
        }
        ASSERT_TRUE(dialogs.waitUntilOver());
    }
    EXPECT_TRUE(asked.contains(picture)) << asked.toStdString();
    EXPECT_EQ(contents(fileIn(picture)), before);
    EXPECT_EQ(QDir(folder_.path()).entryList({"*.png"}).size(), 1);
}

// Names come from strangers: in messages and labels they are words, never markup.
TEST_F(NothingReplacedUnasked, NamesOfFilesAreNoMarkup) {
    const QString name = "<img src=x><b>bold<!--b-->.lobewright.json";
    ASSERT_TRUE(window_->saveTo(fileIn(name)));
    window_->keepBaseline();
    const auto* shown = window_->findChild<QLabel*>("baselineName");
    ASSERT_TRUE(QTest::qWaitFor([&] { return shown->isVisible(); }, 20000));
    EXPECT_EQ(shown->textFormat(), Qt::PlainText);
    EXPECT_FALSE(shown->toolTip().contains("<b>")) << shown->toolTip().toStdString();
    put(name);
    Qt::TextFormat format = Qt::RichText;
    DialogSeries dialogs({[&](QDialog& dialog) {
        format = dynamic_cast<QMessageBox&>(dialog).textFormat();
        dialog.reject();
    }});
    EXPECT_FALSE(mayReplace(window_.get(), {fileIn(name)}));
    EXPECT_TRUE(dialogs.waitUntilOver());
    EXPECT_EQ(format, Qt::PlainText);
}

TEST(WithEnding, AddsTheEndingOfTheChosenKindOnce) {
    const QString pictures = "Picture (*.png);;Drawing (*.svg);;Page (*.pdf)";
    EXPECT_EQ(withEnding("/a/b", pictures, "Drawing (*.svg)"), "/a/b.svg");
    EXPECT_EQ(withEnding("/a/b", pictures, {}), "/a/b.png");
    EXPECT_EQ(withEnding("/a/b.PDF", pictures, "Picture (*.png)"), "/a/b.PDF");
    EXPECT_EQ(withEnding("/a/v1.2", pictures, "Picture (*.png)"), "/a/v1.2.png");
    const QString designs = "Designs (*.lobewright.json);;JSON files (*.json);;All files (*)";
    EXPECT_EQ(withEnding("/a/b", designs, "Designs (*.lobewright.json)"), "/a/b.lobewright.json");
    EXPECT_EQ(withEnding("/a/b.json", designs, "Designs (*.lobewright.json)"), "/a/b.json");
    EXPECT_EQ(withEnding("/a/b", designs, "All files (*)"), "/a/b.lobewright.json");
    EXPECT_EQ(withEnding("/a/b.txt", designs, "All files (*)"), "/a/b.txt");
    EXPECT_EQ(withEnding("/a/b.txt", designs, "JSON files (*.json)"), "/a/b.txt.json");
}

} // namespace
} // namespace lobewright::ui::test
