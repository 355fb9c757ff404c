// The arrangement Unknowns on a design of which not everything is known.
#include "tests/places.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/claims/claims_pane.h"
#include "ui/plots/base/bar_table.h"
#include "ui/plots/base/custom_plot.h"
#include "ui/plots/study/bands_plot.h"
#include "ui/plots/study/decides_view.h"
#include "ui/plots/study/ranges_view.h"
#include "ui/plots/study/torque_curve.h"
#include "ui/plots/turn/channel_plot.h"
#include "ui/window/views.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include <algorithm>

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
    QString bandText() {
        for (const auto* label : decides().findChildren<QLabel*>()) {
            if (label->accessibleName() == DecidesView::tr("Band of the result"))
                return label->text();
        }
        return {};
    }
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
    // What arrows and lines mean stands on the page.
    const QString remark = decides().bars().sections()[0].remark;
    for (const char* sign : {"↗", "↘", "↝"})
        EXPECT_TRUE(remark.contains(QString::fromUtf8(sign))) << qPrintable(remark);
    EXPECT_TRUE(bands().readoutText().contains(QStringLiteral("half lie above")));
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

// What is typed into the claims check is what the engines are held against, and their bands are
// what the verdict is held against.
TEST_F(UnknownsTest, PublishedFiguresAreSearchedForAndTheBandsComeBackToTheVerdict) {
    BandsModel& model = window_->views().bands();
    ASSERT_TRUE(waitUntilDecided());
    EXPECT_TRUE(model.conditions().empty());
    const auto search = [this] {
        for (auto* button : ranges().findChildren<QPushButton*>()) {
            if (button->text() == RangesView::tr("What would have to be true?"))
                return button;
        }
        return static_cast<QPushButton*>(nullptr);
    }();
    ASSERT_NE(search, nullptr);
    EXPECT_FALSE(search->isEnabled());
    // Half of the engines reach the middle of the band of the power.
    const auto power = model.ensemble()->result("peak_power_kW");
    const auto band = unknowns::resultBands(*model.ensemble())[*power].band;
    auto& pane = dynamic_cast<ClaimsPane&>(view(QStringLiteral("claims")));
    study::Claims claims;
    claims.figures.power = study::amount(band->p50, "kW");
    pane.fillIn(claims);
    ASSERT_EQ(model.conditions().size(), 1U);
    EXPECT_EQ(model.conditions()[0].result, "peak_power_kW");
    EXPECT_NEAR(model.conditions()[0].target, band->p50, 1e-9 * band->p50);
    ASSERT_TRUE(search->isEnabled());
    // It is also what stands first to be looked at.
    EXPECT_EQ(decides().findChild<QComboBox*>()->itemData(0).toString(),
              QStringLiteral("peak_power_kW"));
    decides().restoreState(QStringLiteral("peak_power_kW"));
    EXPECT_TRUE(bandText().contains(QStringLiteral("Published (diamond)")))
        << qPrintable(bandText());
    search->click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return model.requirement().has_value(); }, 300000));
    EXPECT_NEAR(model.requirement()->share, 0.5, 0.05);
    EXPECT_FALSE(ranges().found().isEmpty());
    // Nothing of it is left once the figure is gone.
    pane.fillIn({});
    EXPECT_TRUE(model.conditions().empty());
    EXPECT_FALSE(model.requirement());
    EXPECT_FALSE(search->isEnabled());
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
    // The warm engine has another clearance: its compression moves, beyond what scatters.
    BandsModel& model = window_->views().bands();
    const auto middle = [&model] {
        const auto column = model.ensemble()->result("compression_ratio");
        return unknowns::resultBands(*model.ensemble())[*column].band->p50;
    };
    ASSERT_TRUE(QTest::qWaitFor([&] { return model.isWhole(); }, 300000));
    const double cold = middle();
    auto* warm = ranges().findChild<QCheckBox*>();
    ASSERT_NE(warm, nullptr);
    EXPECT_TRUE(warm->isVisibleTo(&ranges()));
    warm->setChecked(true);
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return model.isWhole() && std::abs(middle() / cold - 1.0) > 0.005; }, 300000));
}

TEST_F(UnknownsTest, AClickOnARowAsksForItsInput) {
    ASSERT_TRUE(waitUntilDecided());
    QSignalSpy wanted(&ranges(), &RangesView::fieldWanted);
    for (QWidget* child : ranges().findChildren<QWidget*>()) {
        if (child->accessibleName() == QStringLiteral("What is not known"))
            QTest::mouseClick(child, Qt::LeftButton, {}, QPoint(20, 20));
    }
    ASSERT_EQ(wanted.size(), 1);
    // What decides most stands first.
    const BandsModel& model = window_->views().bands();
    const auto& most = model.decided()->decision.influences.front();
    EXPECT_EQ(wanted[0][0].toString().toStdString(),
              model.ensemble()->unknowns[most.unknown].members.front().field.path);
}

namespace {
/// Share of the pixels in which two pictures of one size differ.
double difference(const QImage& a, const QImage& b) {
    long differing = 0;
    for (int y = 0; y < a.height(); ++y) {
        for (int x = 0; x < a.width(); ++x)
            differing += a.pixel(x, y) != b.pixel(x, y) ? 1 : 0;
    }
    return static_cast<double>(differing) / (static_cast<double>(a.width()) * a.height());
}
} // namespace

TEST_F(UnknownsTest, OneSwitchPutsBandsBehindAllPlotsOfTheDesign) {
    auto& gas = dynamic_cast<ChannelPlot&>(view(QStringLiteral("gas")));
    auto& torque = dynamic_cast<TorqueCurve&>(view(QStringLiteral("torque-curve")));
    window_->views().refresh(*window_->views().find(QStringLiteral("gas")));
    window_->views().refresh(*window_->views().find(QStringLiteral("torque-curve")));
    const QImage without = gas.canvas().toPixmap(500, 300).toImage();
    const int graphs = torque.plot().graphCount();
    BandsBehind& behind = window_->views().bands().behind();
    QMenu menu;
    gas.addOptions(menu);
    const auto actions = menu.actions();
    const auto action = std::ranges::find(actions, BandsBehind::tr("Show &bands"), &QAction::text);
    ASSERT_NE(action, actions.end());
    (*action)->setChecked(true);
    EXPECT_TRUE(behind.isShown());
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return behind.channel("pressure_bar") && !behind.curve().empty(); }, 300000));
    EXPECT_GT(difference(gas.canvas().toPixmap(500, 300).toImage(), without), 0.02);
    EXPECT_EQ(torque.plot().graphCount(), graphs + 8); // four edges of torque and of power
    EXPECT_TRUE(torque.readoutText().contains(QStringLiteral("9 of 10")));
    const auto low = torque.plot().graph(0)->data(), high = torque.plot().graph(1)->data();
    ASSERT_GT(low->size(), 3);
    for (int i = 0; i < low->size(); ++i)
        EXPECT_LT(low->at(i)->value, high->at(i)->value);
    if (const QByteArray folder = qgetenv("LOBEWRIGHT_PICTURES"); !folder.isEmpty()) {
        for (const char* theme : {"light", "dark"}) {
            window_->setTheme(QString::fromLatin1(theme));
            for (const char* arrangement : {"performance", "designer"}) {
                window_->arrange(QString::fromLatin1(arrangement));
                QTest::qWait(4000);
                EXPECT_TRUE(window_->grab().save(QStringLiteral("%1/behind-%2-%3.png")
                                                     .arg(QString::fromUtf8(folder),
                                                          QString::fromLatin1(arrangement),
                                                          QString::fromLatin1(theme))));
            }
        }
        return;
    }
    behind.setShown(false);
    EXPECT_EQ(behind.channel("pressure_bar"), nullptr);
    EXPECT_EQ(torque.plot().graphCount(), graphs);
    EXPECT_LT(difference(gas.canvas().toPixmap(500, 300).toImage(), without), 0.001);
}

TEST_F(UnknownsTest, BandsOfAnotherDesignAreNotShown) {
    BandsBehind& behind = window_->views().bands().behind();
    behind.setShown(true);
    ASSERT_TRUE(QTest::qWaitFor([&] { return behind.channel("pressure_bar") != nullptr; }, 300000));
    Edit edit;
    edit.changes = {{"/running/speed_rpm", 450.0}};
    ASSERT_TRUE(window_->document().apply(edit).empty());
    ASSERT_TRUE(waitUntilSolved());
    EXPECT_EQ(behind.channel("pressure_bar"), nullptr);
    EXPECT_TRUE(behind.curve().empty());
    EXPECT_TRUE(QTest::qWaitFor([&] { return behind.channel("pressure_bar") != nullptr; }, 300000));
}
