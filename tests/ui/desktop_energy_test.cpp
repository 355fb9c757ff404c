#include "tests/places.h"
#include "tests/ui/desktop_fixture.h"
#include "tests/ui/drawn_text.h"
#include "ui/plots/study/figure_bars.h"
#include "ui/plots/study/supply_strip.h"

#include <QTest>

#include <cmath>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

class EnergyTest : public WindowTest {
  protected:
    void SetUp() override {
        WindowTest::SetUp();
        window_->arrange(QStringLiteral("performance"));
    }
    SupplyStrip& strip() { return dynamic_cast<SupplyStrip&>(view(QStringLiteral("supply"))); }
    EnergyAudit& audit() { return dynamic_cast<EnergyAudit&>(view(QStringLiteral("energy"))); }
    bool give(const std::string& path, const design::FieldValue& value) {
        Edit edit;
        edit.changes = {{path, value}};
        window_->document().apply(edit);
        return waitUntilSolved();
    }
};

double sum(const BarTable::Section& section) {
    double total = 0.0;
    for (const BarTable::Row& row : section.rows)
        total += row.value.value_or(0.0);
    return total;
}

} // namespace

// First law: what comes in goes out, to the residual that the table itself states.
TEST_F(EnergyTest, AuditRowsOfHeatInAndOutAreEqual) {
    ASSERT_TRUE(audit().isVisible());
    const auto& sections = audit().sections();
    ASSERT_EQ(sections.size(), 3U);
    EXPECT_EQ(sections[0].rows.size(), 2U);
    EXPECT_EQ(sections[1].rows.size(), 4U);
    EXPECT_TRUE(sections[1].oneBar);
    const double in = sum(sections[0]);
    EXPECT_NEAR(sum(sections[1]), in, 1e-5 * in);
}

// A joule is as long above as below: the bars have one scale, which the longest fills.
TEST_F(EnergyTest, HeatInAndWhereItGoesHaveOneScale) {
    const auto& sections = audit().sections();
    EXPECT_EQ(sections[0].scale, sections[1].scale);
    double largest = 0.0;
    for (const std::size_t i : {0U, 1U}) {
        for (const BarTable::Row& row : sections[i].rows)
            largest = std::max(largest, std::abs(row.value.value_or(0.0)));
    }
    EXPECT_EQ(sections[0].scale, largest);
}

// Without fuel, what is left of the sums is no bar and no number with an exponent.
TEST_F(EnergyTest, MotoredBarsShowNoRoundingErrors) {
    ASSERT_TRUE(give("/running/motored", true));
    ASSERT_TRUE(QTest::qWaitFor([&] { return audit().width() > 300; }));
    for (const DrawnText& text : drawnText(audit())) {
        if (!text.text.contains("residual")) {
            EXPECT_FALSE(text.text.contains("e-")) << text.text.toStdString();
        }
    }
    EXPECT_EQ(audit().sections()[0].scale, audit().sections()[1].scale);
}

TEST_F(EnergyTest, BrakeWorkAndLossesAddUpToTheIndicatedWork) {
    const double all = *window_->solution()->figure("imep_bar")->value;
    EXPECT_NEAR(sum(audit().sections()[2]), all, 1e-9 * all);
}

// Every stream is as high as it is large, on one scale, and splits without remainder.
TEST_F(EnergyTest, StreamsAreDrawnToOneScale) {
    ASSERT_TRUE(QTest::qWaitFor([&] { return audit().width() > 300; }));
    const auto flow = audit().flow();
    ASSERT_TRUE(flow.has_value());
    const auto heights = [](const std::vector<FlowLayout::Node>& nodes) {
        double all = 0.0;
        for (const auto& node : nodes)
            all += node.bar.height();
        return all;
    };
    const double in = sum(audit().sections()[0]);
    EXPECT_NEAR(heights(flow->in()), in * flow->scale(), 1e-6);
    EXPECT_NEAR(heights(flow->out()), heights(flow->in()), 1e-4 * heights(flow->in()));
    EXPECT_NEAR(heights(flow->work()), flow->out().front().bar.height(), 1e-6);
    const double work = *window_->solution()->figure("indicated_work_J")->value;
    EXPECT_NEAR(flow->out().front().bar.height(), work * flow->scale(), 1e-6);
    EXPECT_GT(flow->scale() * in, 0.2 * audit().height()); // large enough to be seen
}

// Heat that runs the other way has no stream.
TEST_F(EnergyTest, AMotoredEngineHasBars) {
    ASSERT_TRUE(give("/running/motored", true));
    EXPECT_FALSE(audit().flow().has_value());
}

TEST_F(EnergyTest, BarsOnDemand) {
    ASSERT_TRUE(QTest::qWaitFor([&] { return audit().flow().has_value(); }));
    ASSERT_TRUE(audit().flow().has_value());
    audit().setAsBars(true);
    EXPECT_FALSE(audit().flow().has_value());
}

TEST_F(EnergyTest, BaselineStandsOnTheBars) {
    window_->keepBaseline();
    ASSERT_TRUE(give("/gas/lambda", 1.4));
    const auto& fuel = audit().sections()[0].rows[0];
    ASSERT_TRUE(fuel.value && fuel.before);
    EXPECT_LT(*fuel.value, *fuel.before);
}

TEST_F(EnergyTest, StripSaysWhoPaysForThePressure) {
    ASSERT_TRUE(window_->openFile(QString::fromStdString(lobewright::test::sourceFolder()) +
                                  "/samples/sketched-lobes-blown.lobewright.json"));
    ASSERT_TRUE(waitUntilSolved());
    const auto& stations = strip().stations();
    ASSERT_GE(stations.size(), 4U);
    EXPECT_EQ(stations.front().title, QStringLiteral("Ambient"));
    EXPECT_EQ(stations[1].passage, QStringLiteral("blower"));
    EXPECT_TRUE(stations[1].passageValue.contains(QLatin1String("kW")));
    EXPECT_FALSE(stations[1].isUnpaid);
    EXPECT_TRUE(strip().verdict().contains(QLatin1String("pays")));
}

// Every stage once, each with who pays for it, and what is not modelled said once.
TEST_F(EnergyTest, StripFollowsTheGasThroughATurbocharger) {
    ASSERT_TRUE(window_->openFile(QString::fromStdString(lobewright::test::sourceFolder()) +
                                  "/samples/turbocharged-works-generator.lobewright.json"));
    ASSERT_TRUE(waitUntilSolved());
    QStringList titles;
    for (const auto& station : strip().stations())
        titles << station.title;
    EXPECT_EQ(titles,
              (QStringList{"Ambient", "Behind the compressor", "Behind the blower", "Plenum",
                           "Chamber, ports closed", "Exhaust plenum", "Behind the turbine"}));
    const auto& stations = strip().stations();
    EXPECT_TRUE(stations[1].passageValue.contains(QLatin1String("the exhaust pays")));
    EXPECT_TRUE(stations[2].passageValue.contains(QLatin1String("the shaft pays")));
    EXPECT_EQ(stations[5].end, End::exhaust);
    EXPECT_EQ(strip().verdict().count(QLatin1String("No pipes modelled")), 1);
}

TEST_F(EnergyTest, UnpaidReservoirIsMarkedNotCounted) {
    if (!give("/gas/supply/pressure_bar", 1.5) || !give("/gas/supply/unpaid", true))
        FAIL();
    const auto& stations = strip().stations();
    ASSERT_EQ(stations.size(), 4U);
    EXPECT_EQ(stations[1].passage, QStringLiteral("compressor"));
    EXPECT_TRUE(stations[1].isUnpaid);
    EXPECT_TRUE(strip().verdict().contains(QLatin1String("not counted")));
}

// The words and numbers that the views hold are written on them, and none beside them.
TEST_F(EnergyTest, EveryViewOfThePaneWritesWhatItHolds) {
    ASSERT_TRUE(QTest::qWaitFor([&] { return strip().width() > 300 && audit().width() > 300; }));
    const auto written = [](QWidget& view) {
        QStringList words;
        for (const DrawnText& text : drawnText(view)) {
            words << text.text;
            EXPECT_TRUE(QRectF(view.rect()).contains(text.box.center())) << text.text.toStdString();
        }
        return words.join('\n');
    };
    // A narrow column shortens a word: its beginning stands there in any case.
    const QString supply = written(strip());
    for (const auto& station : strip().stations())
        EXPECT_TRUE(supply.contains(station.title.left(4))) << station.title.toStdString();
    const QString energy =
        written(audit()).replace(QLatin1Char('\n'), QLatin1Char(' ')); // titles break
    for (const auto& section : audit().sections()) {
        EXPECT_TRUE(energy.contains(section.title)) << section.title.toStdString();
        for (const auto& row : section.rows) {
            const bool isShown = row.value.value_or(0.0) != 0.0; // else the engine has none of it
            EXPECT_TRUE(!isShown || energy.contains(row.label.left(4))) << row.label.toStdString();
        }
    }
}
