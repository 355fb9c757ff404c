// The arrangement Unknowns on a design of which not everything is known.
#include "tests/places.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/plots/base/bar_table.h"
#include "ui/plots/base/custom_plot.h"
#include "ui/plots/study/bands_plot.h"
#include "ui/plots/study/decides_view.h"
#include "ui/plots/study/ranges_view.h"

#include <QComboBox>
#include <QSignalSpy>
#include <QTest>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

class UnknownsTest : public WindowTest {
  protected:
    void SetUp() override {
        WindowTest::SetUp();
        window_->resize(1280, 800);
        window_->document().open(QString::fromStdString(
            lobewright::test::sourceFolder() + "/samples/hydrogen-buoy-generator.lobewright.json"));
        ASSERT_TRUE(waitUntilSolved());
        window_->arrange(QStringLiteral("unknowns"));
    }
    BandsPlot& bands() { return dynamic_cast<BandsPlot&>(view(QStringLiteral("bands"))); }
    DecidesView& decides() { return dynamic_cast<DecidesView&>(view(QStringLiteral("decides"))); }
    RangesView& ranges() { return dynamic_cast<RangesView&>(view(QStringLiteral("ranges"))); }
    /// All engines computed, and what decides the result known.
    bool waitUntilDecided() {
        return QTest::qWaitFor([this] { return !decides().advice().isEmpty(); }, 300000);
    }
};

} // namespace

TEST_F(UnknownsTest, BandsDecisionAndRangesAppear) {
    ASSERT_TRUE(waitUntilDecided());
    EXPECT_TRUE(bands().readoutText().contains(QStringLiteral("90 % of the engines")))
        << qPrintable(bands().readoutText());
    EXPECT_TRUE(decides().advice().contains(QStringLiteral("band")));
    ASSERT_EQ(decides().bars().sections().size(), 1u);
    EXPECT_GE(decides().bars().sections()[0].rows.size(), 3u);
    EXPECT_FALSE(ranges().found().isEmpty());
    if (const QByteArray folder = qgetenv("LOBEWRIGHT_PICTURES"); !folder.isEmpty()) {
        for (const char* theme : {"light", "dark"}) {
            window_->setTheme(QString::fromLatin1(theme));
            QTest::qWait(500);
            EXPECT_TRUE(window_->grab().save(
                QStringLiteral("%1/unknowns-%2.png").arg(QString::fromUtf8(folder), theme)));
        }
    }
}

TEST_F(UnknownsTest, AnotherResultIsDecidedByOtherThings) {
    ASSERT_TRUE(waitUntilDecided());
    decides().restoreState(QStringLiteral("compression_ratio"));
    ASSERT_TRUE(QTest::qWaitFor(
        [this] {
            const auto& rows = decides().bars().sections()[0].rows;
            return rows.size() == 1 && rows[0].label.contains(QStringLiteral("clearance"));
        },
        20000));
}

TEST_F(UnknownsTest, TheScatterOfManufactureIsNarrower) {
    ASSERT_TRUE(waitUntilDecided());
    const auto widthOf = [this] {
        const auto& plot = bands().plot();
        const auto low = plot.graph(0)->data(), high = plot.graph(1)->data();
        return high->at(4)->value - low->at(4)->value;
    };
    const double before = widthOf();
    auto* purpose = ranges().findChild<QComboBox*>();
    purpose->setCurrentIndex(1);
    Q_EMIT purpose->activated(1);
    ASSERT_TRUE(QTest::qWaitFor([&] { return widthOf() < 0.5 * before; }, 60000));
    EXPECT_GT(widthOf(), 0.0);
}

TEST_F(UnknownsTest, AClickOnARowAsksForItsInput) {
    ASSERT_TRUE(waitUntilDecided());
    QSignalSpy wanted(&ranges(), &RangesView::fieldWanted);
    for (QWidget* child : ranges().findChildren<QWidget*>()) {
        if (child->accessibleName() == QStringLiteral("What is not known"))
            QTest::mouseClick(child, Qt::LeftButton, {}, QPoint(20, 20));
    }
    ASSERT_EQ(wanted.size(), 1);
    EXPECT_TRUE(wanted[0][0].toString().startsWith(QLatin1Char('/')));
}
