#include "tests/places.h"
#include "tests/ui/desktop_fixture.h"
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

TEST_F(EnergyTest, FrictionPartsAddUpToAllLosses) {
    const double all = *window_->solution()->figure("fmep_bar")->value;
    EXPECT_NEAR(sum(audit().sections()[2]), all, 1e-9 * all);
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

TEST_F(EnergyTest, UnpaidReservoirIsMarkedNotCounted) {
    if (!give("/gas/supply/pressure_bar", 1.5) || !give("/gas/supply/unpaid", true))
        FAIL();
    const auto& stations = strip().stations();
    ASSERT_EQ(stations.size(), 4U);
    EXPECT_EQ(stations[1].passage, QStringLiteral("compressor"));
    EXPECT_TRUE(stations[1].isUnpaid);
    EXPECT_TRUE(strip().verdict().contains(QLatin1String("not counted")));
}

TEST_F(EnergyTest, EveryViewOfThePaneShowsSomething) {
    for (const char* key : {"supply", "energy"}) {
        ASSERT_TRUE(QTest::qWaitFor(
            [&] { return view(QString::fromLatin1(key)).width() > 300; })); // laid out
        const QImage picture = view(QString::fromLatin1(key)).grab().toImage();
        int inked = 0;
        for (int y = 0; y < picture.height(); ++y)
            for (int x = 0; x < picture.width(); ++x)
                inked += picture.pixel(x, y) != picture.pixel(1, 1);
        EXPECT_GT(inked, 1000) << key;
    }
}
