#include "core/units.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/plots/base/turn_events.h"
#include "ui/plots/contact/contact_map_plot.h"
#include "ui/plots/study/figure_bars.h"
#include "ui/plots/turn/free_body.h"
#include "ui/plots/turn/lever_plot.h"

#include <QTest>

#include <cmath>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

class LoadsTest : public WindowTest {
  protected:
    void SetUp() override {
        WindowTest::SetUp();
        window_->arrange(QStringLiteral("durability"));
    }
    template <class View>
    View& shown(const char* key) {
        return dynamic_cast<View&>(view(QString::fromLatin1(key)));
    }
    double figure(const char* name) { return *window_->solution()->figure(name)->value; }
};

} // namespace

TEST_F(LoadsTest, WorstPlaceOfTheMapIsTheFigureOfTheList) {
    auto& map = shown<ContactMapPlot>("contact-map");
    ASSERT_TRUE(map.isVisible());
    for (const End end : bothEnds) {
        const auto name = [&](const char* before, const char* after) {
            return std::string(before) + lobewright::name(end) + after;
        };
        map.show(end, ContactMapPlot::Quantity::pressure);
        ASSERT_TRUE(map.worst());
        // The figure also looks just before each junction, the map at the samples.
        const double stress = figure(name("peak_contact_pressure_", "_MPa").c_str());
        EXPECT_NEAR(map.worst()->value, stress, 1e-3 * stress);
        map.show(end, ContactMapPlot::Quantity::filmRatio);
        ASSERT_TRUE(map.worst());
        const double ratio = figure(name("lowest_film_ratio_", "").c_str());
        EXPECT_NEAR(map.worst()->value, ratio, 0.02 * ratio);
        map.show(end, ContactMapPlot::Quantity::slip);
        const double slip = figure(name("highest_slip_", "_m_per_s").c_str());
        EXPECT_LE(map.worst()->value, slip * (1.0 + 1e-9));
    }
}

TEST_F(LoadsTest, ContactMapRemembersItsChoice) {
    auto& map = shown<ContactMapPlot>("contact-map");
    map.show(End::exhaust, ContactMapPlot::Quantity::shear);
    const QString kept = map.state();
    const double shear = map.worst()->value;
    map.show(End::inlet, ContactMapPlot::Quantity::film);
    map.restoreState(kept);
    EXPECT_EQ(map.worst()->value, shear);
}

TEST_F(LoadsTest, PistonForcesFollowTheCursorAndClose) {
    auto& body = shown<FreeBody>("free-body");
    double highest = 0.0;
    for (const double degrees : {10.0, 60.0, 90.0, 130.0, 200.0}) {
        window_->cursor().setAngle(degrees * units::degree);
        for (const End end : bothEnds) {
            const auto polygon = body.polygon(end);
            ASSERT_TRUE(polygon);
            if (polygon->track.norm() > 0.0) {
                EXPECT_LT(polygon->sum().norm(), 1e-6 * (1.0 + polygon->track.norm()));
            }
            highest = std::max(highest, polygon->gas.norm());
        }
    }
    EXPECT_GT(highest, 0.0);
}

TEST_F(LoadsTest, LeverPlotShowsBothTracksAndTheCrank) {
    auto& lever = shown<LeverPlot>("lever");
    ASSERT_EQ(lever.curves().size(), 4U);
    // A crank's throw is half the stroke; with a rod its lever is a little longer.
    const double stroke = window_->solution()->pair.curve(End::inlet).stroke() / units::millimetre;
    const double throwOfCrank = lever.curves()[3].values.maxCoeff();
    EXPECT_GE(throwOfCrank, 0.5 * stroke);
    EXPECT_LT(throwOfCrank, 0.56 * stroke);
    // Geared to the cycles of the track it is as much longer as it turns faster.
    EXPECT_NEAR(lever.curves()[2].values.maxCoeff(),
                window_->solution()->pair.cyclesPerTurn() * throwOfCrank, 1e-9);
}

TEST_F(LoadsTest, BearingLoadsAreThereOrTheReasonIs) {
    auto& bearings = shown<BearingPlot>("bearings");
    const bool known = window_->solution()->design.mechanism.piston.has_value();
    for (const Curve& curve : bearings.curves())
        EXPECT_EQ(curve.values.size() > 0, known);
}

TEST_F(LoadsTest, FirstTorqueOrderIsTheMeanTorque) {
    auto& orders = shown<OrderBars>("orders");
    orders.showSolution(window_->solution());
    const auto& torque = orders.sections()[3];
    ASSERT_FALSE(torque.rows.empty());
    EXPECT_NEAR(*torque.rows.front().value, std::abs(figure("mean_torque_Nm")),
                1e-3 * std::abs(figure("mean_torque_Nm")));
}

TEST_F(LoadsTest, OrdersPaneSaysWhatWouldCancelTheForceAndWhichInertiaSteadiesTheSpeed) {
    auto& orders = shown<OrderBars>("orders");
    orders.showSolution(window_->solution());
    ASSERT_EQ(orders.sections().size(), 6U);
    const auto& remedy = orders.sections()[4];
    EXPECT_EQ(remedy.rows.size(), 6U);
    EXPECT_FALSE(remedy.remark.isEmpty());
    const auto& fluctuation = orders.sections()[5];
    EXPECT_EQ(fluctuation.rows.size(), 5U);
    EXPECT_EQ(*fluctuation.rows.back().value, figure("inertia_for_5_percent_kg_m2"));
}

// A light pressure over heavy pistons on a closed track: the load changes flank where the demanded
// force changes its sign, and every plot over the turn marks it.
TEST_F(LoadsTest, RattleIsMarkedWhereTheDemandedForceChangesSign) {
    auto design = window_->solution()->design;
    design.mechanism.closedTrack = true;
    design.mechanism.pistonMass = {6.0, 6.0};
    design.running.motored = true;
    SilentMonitor monitor;
    const auto solved = solution::solve(design, monitor);
    ASSERT_TRUE(solved);
    const auto marks = rattles(*solved);
    ASSERT_FALSE(marks.empty());
    for (const Rattle& mark : marks) {
        const auto* demand =
            solved->channel(std::string("demanded_force_") + name(mark.end) + "_N");
        const double before = valueAt(solved->theta, demand->values, mark.theta - 0.02);
        const double after = valueAt(solved->theta, demand->values, mark.theta + 0.02);
        EXPECT_LT(before * after, 0.0);
        EXPECT_EQ(mark.leavesPush, after < 0.0);
    }
    design.mechanism.closedTrack = false;
    EXPECT_TRUE(rattles(*solution::solve(design, monitor)).empty());
}

// The film of a crowned roller is one for the whole ellipse; the map shows it wherever it touches.
TEST_F(LoadsTest, CrownedFilmIsDrawnOverTheWholeContact) {
    auto design = window_->solution()->design;
    design.mechanism.roller.crownRadius = 0.4;
    SilentMonitor monitor;
    auto solved = solution::solve(design, monitor);
    ASSERT_TRUE(solved);
    auto& map = shown<ContactMapPlot>("contact-map");
    map.showSolution(std::make_shared<const solution::Solution>(*solved));
    map.show(End::inlet, ContactMapPlot::Quantity::film);
    ASSERT_TRUE(map.worst());
    const auto* colours = qobject_cast<const QCPColorMap*>(map.plottable(0));
    ASSERT_NE(colours, nullptr);
    int beside = 0;
    for (int i = 0; i < colours->data()->keySize(); ++i)
        beside += std::isfinite(colours->data()->cell(i, 6)) ? 1 : 0;
    EXPECT_GT(beside, 100); // line 7 is the middle
}
