#include "core/design/file.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/base/core_text.h"
#include "ui/base/units.h"
#include "ui/document/samples.h"
#include "ui/handles/handle.h"
#include "ui/panels/field_editor.h"
#include "ui/panels/figures_panel.h"
#include "ui/panels/limits_list.h"
#include "ui/panels/number_edit.h"
#include "ui/panels/number_panel.h"
#include "ui/plots/contact/stress_plot.h"
#include "ui/window/figures_bar.h"

#include <QFile>
#include <QLabel>
#include <QRegularExpression>
#include <QSettings>
#include <QStatusBar>
#include <QTest>
#include <QTreeWidget>

#include <cmath>
#include <set>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

/// The inch display for the length of a scope.
class InInches {
  public:
    InInches() { Units::instance().setSystem(UnitSystem::inch); }
    ~InInches() { Units::instance().setSystem(UnitSystem::metric); }
};

/// The window, and the metric display afterwards whatever the test does.
class UnitsTest : public WindowTest {
  protected:
    ~UnitsTest() override { Units::instance().setSystem(UnitSystem::metric); }

    NumberEdit& numberEdit(const std::string& path) {
        for (FieldEditor* editor : window_->numbers().findChildren<FieldEditor*>()) {
            if (editor->path() == path)
                return *editor->findChild<NumberEdit*>();
        }
        throw std::runtime_error("no editor for " + path);
    }
    void type(const std::string& path, const QString& text) {
        NumberEdit& edit = numberEdit(path);
        window_->numbers().goTo(QString::fromStdString(path));
        QTest::qWait(50);
        edit.setFocus();
        edit.selectAll();
        QTest::keyClicks(&edit, text);
        QTest::keyClick(&edit, Qt::Key_Return);
    }
    /// Highest value of the first curve of the stress plot, as drawn.
    double highestStress() {
        return dynamic_cast<StressPlot&>(view("stress")).curves().front().values.maxCoeff();
    }
    /// Every text that the window shows in labels, lists and axes.
    QStringList textsShown() {
        QStringList all;
        for (const QLabel* label : window_->findChildren<QLabel*>())
            all << label->text();
        for (QTreeWidgetItemIterator it(&window_->figures()); *it; ++it)
            all << (*it)->text(1);
        const QAbstractItemModel& limits = *window_->limits().model();
        for (int row = 0; row < limits.rowCount(); ++row)
            all << limits.index(row, 0).data().toString();
        for (const QCustomPlot* plot : window_->findChildren<QCustomPlot*>()) {
            for (const QCPAxis* axis : {plot->xAxis, plot->yAxis, plot->yAxis2}) {
                if (axis)
                    all << axis->label();
            }
        }
        return all;
    }
};

} // namespace

// The factors of NIST Special Publication 811 (2008), appendix B.8, to the digits printed there.
TEST(Units, FactorsAreThoseOfTheStandard) {
    const InInches inches;
    const auto inMetric = [](const char* unit) {
        return unitFor(QString::fromUtf8(unit)).metric(1.0);
    };
    EXPECT_DOUBLE_EQ(inMetric("mm"), 25.4);
    EXPECT_DOUBLE_EQ(inMetric("m/s"), 0.3048);
    EXPECT_NEAR(inMetric("N"), 4.448222, 5e-7);
    EXPECT_NEAR(inMetric("N·m"), 1.355818, 5e-7);
    EXPECT_NEAR(inMetric("J"), 1.355818, 5e-7);
    EXPECT_NEAR(inMetric("bar"), 6.894757e-2, 5e-9);
    EXPECT_NEAR(inMetric("MPa"), 6.894757, 5e-7);
    EXPECT_NEAR(inMetric("kW"), 7.456999e-1, 5e-8);
    EXPECT_NEAR(inMetric("kg"), 0.45359237, 1e-15);
    EXPECT_NEAR(inMetric("cm³"), 16.38706, 5e-6);
    EXPECT_NEAR(inMetric("mm²"), 645.16, 1e-9);
    EXPECT_NEAR(inMetric("mg"), 64.79891, 5e-6); // the grain
    EXPECT_NEAR(inMetric("kg·m²"), 4.214011e-2, 5e-9);
    EXPECT_NEAR(inMetric("g/kWh"), 608.2774, 5e-4);   // lb/(hp·h): 1.689659e-7 kg/J
    EXPECT_NEAR(inMetric("Pa·s"), 6.894757e-3, 5e-9); // a millionth of lbf·s/in²
    EXPECT_NEAR(unitFor(QStringLiteral("K")).shown(273.15), 32.0, 1e-9);
    EXPECT_NEAR(unitFor(QStringLiteral("K")).shown(373.15), 212.0, 1e-9);
    EXPECT_NEAR(unitFor(QStringLiteral("K")).difference(10.0), 18.0, 1e-12);
}

TEST(Units, ValuesComeBackFromTheScreen) {
    const InInches inches;
    for (const char* name :
         {"mm",  "µm", "mm²", "cm³", "m/s", "N",    "kN",    "N·m",   "bar",  "MPa",
          "GPa", "kW", "kg",  "mg",  "K",   "Pa·s", "1/GPa", "g/kWh", "mm/°", "s/m"}) {
        const ui::Unit unit = unitFor(QString::fromUtf8(name));
        EXPECT_FALSE(unit.isMetric()) << name;
        for (const double value : {0.1, 95.0, 473.15})
            EXPECT_NEAR(unit.metric(unit.shown(value)), value, 1e-11 * value) << name;
    }
}

TEST(Units, TypedInchesAreWholeDecimalsOfAMillimetre) {
    const InInches inches;
    const ui::Unit length = unitFor(QStringLiteral("mm"));
    for (int thousandths = 1; thousandths <= 5000; ++thousandths) {
        const double exact = QString::number(thousandths * 254).toDouble() / 10000.0;
        EXPECT_EQ(length.metric(thousandths / 1000.0), exact) << thousandths;
    }
}

TEST(Units, EveryUnitOfTheProgramIsInTheTable) {
    std::set<std::string> missing;
    const auto look = [&](const std::string& unit, const std::string& where) {
        if (!isKnownUnit(QString::fromStdString(unit)))
            missing.insert(unit + " of " + where);
    };
    for (const Sample& sample : samples()) {
        const auto design = loadSample(sample);
        ASSERT_TRUE(design);
        for (const design::Field& field : design::fields(*design))
            look(field.unit, field.path);
        SilentMonitor monitor;
        const auto solved = solution::solve(*design, monitor);
        ASSERT_TRUE(solved);
        for (const auto& figure : solved->figures)
            look(figure.symbolOfUnit(), figure.name);
        for (const auto& channel : solved->channels)
            look(channel.symbolOfUnit(), channel.name);
        for (const auto& check : solved->checks)
            look(std::string(check.unit->symbol), check.id);
    }
    EXPECT_TRUE(missing.empty()) << *missing.begin();
}

TEST(Units, SentencesOfTheCoreAreConvertedToo) {
    const Message sentence{LW_TEXT("%1 is %2, above %3: %4."), LW_TEXT("Bore"),
                           Amount(0.254, in::mm), Amount(1e5, in::bar),
                           Message(LW_TEXT("%1, %2"), Amount(373.15, in::kelvin),
                                   withDecimals(-0.0254, in::mmPerTurn, 0))};
    EXPECT_EQ(coreText(sentence).toStdString(),
              std::string("Bore is 254 mm, above 1 bar: 373.1 K, \u221225 mm/rev."));
    const InInches inches;
    EXPECT_EQ(coreText(sentence).toStdString(),
              std::string("Bore is 10 in, above 14.5 psi: 212 °F, \u22121.00 in/rev."));
}

TEST(Units, HandlesSnapToPlainInches) {
    HandleAxis axis;
    axis.unit = QStringLiteral("mm");
    axis.max = 100.0;
    EXPECT_DOUBLE_EQ(snapped(axis, 12.34, 0.1), 12.3);
    const InInches inches;
    // A tenth of a millimetre is nearest to five thousandths of an inch.
    const double value = snapped(axis, 12.34, 0.1);
    EXPECT_NEAR(value / (0.005 * 25.4), std::round(value / (0.005 * 25.4)), 1e-9);
    EXPECT_EQ(shownValue(axis, 25.4), QStringLiteral("1.0000\u00A0in"));
}

TEST_F(UnitsTest, TypingInchesStoresMillimetresExactly) {
    const QString file = fileIn("inches.lobewright.json");
    Units::instance().setSystem(UnitSystem::inch);
    EXPECT_EQ(readNumber(numberEdit("/mechanism/clearance_mm").text()),
              QString::number(number("/mechanism/clearance_mm") / 25.4, 'g', 5).toDouble());
    type("/mechanism/clearance_mm", QStringLiteral("0.285"));
    EXPECT_EQ(number("/mechanism/clearance_mm"), 7.239);
    EXPECT_EQ(numberEdit("/mechanism/clearance_mm").text(), QLocale().toString(0.285));
    ASSERT_TRUE(window_->saveTo(file));
    QFile saved(file);
    ASSERT_TRUE(saved.open(QIODevice::ReadOnly));
    EXPECT_TRUE(saved.readAll().contains("\"clearance_mm\": 7.239"));
}

TEST_F(UnitsTest, TemperaturesAreTypedInFahrenheit) {
    Units::instance().setSystem(UnitSystem::inch);
    type("/gas/wall_heat/crown_K", QStringLiteral("440.33"));
    EXPECT_NEAR(number("/gas/wall_heat/crown_K"), 500.0, 1e-9);
}

TEST_F(UnitsTest, LookingAtInchesChangesNothing) {
    const design::Design before = window_->document().design();
    Units::instance().setSystem(UnitSystem::inch);
    for (FieldEditor* editor : window_->numbers().findChildren<FieldEditor*>()) {
        auto* edit = editor->findChild<NumberEdit*>();
        if (!edit || !edit->isEnabled())
            continue;
        // The text as it stands, typed again.
        const QString text = edit->text();
        edit->setFocus();
        edit->selectAll();
        edit->insert(text);
        QTest::keyClick(edit, Qt::Key_Return);
    }
    Units::instance().setSystem(UnitSystem::metric);
    EXPECT_EQ(window_->document().design(), before);
    EXPECT_FALSE(window_->document().isModified());
}

TEST_F(UnitsTest, SwitchReachesEveryPartOfTheWindowAndComesBack) {
    const QStringList metric = textsShown();
    const double peak = highestStress();
    Units::instance().setSystem(UnitSystem::inch);
    const QStringList inches = textsShown();
    const QRegularExpression leftover(
        QStringLiteral("(^|[ \u00A0,])(mm|mm²|cm³|bar|MPa|N·m|kW|kN|µm|m/s|m/s²|mg)$"));
    for (const QString& text : inches)
        EXPECT_FALSE(text.contains(leftover)) << text.toStdString();
    EXPECT_TRUE(inches.join(' ').contains(QLatin1String("ksi")));
    EXPECT_NEAR(highestStress(), peak / 6.894757293168361, 1e-9 * peak);
    Units::instance().setSystem(UnitSystem::metric);
    const QStringList again = textsShown();
    ASSERT_EQ(again.size(), metric.size());
    for (qsizetype i = 0; i < metric.size(); ++i) {
        // A view that was never shown names its axes at the first switch, and by its unit only as
        // long as it is low.
        EXPECT_TRUE(metric[i].isEmpty() || again[i] == metric[i] || metric[i].endsWith(again[i]) ||
                    again[i].endsWith(metric[i]))
            << again[i].toStdString() << " was " << metric[i].toStdString();
    }
}

TEST_F(UnitsTest, ChoiceIsRememberedAndStandsInTheViewMenu) {
    QAction* inch = nullptr;
    for (QAction* action : window_->findChildren<QAction*>()) {
        if (action->text() == QLatin1String("&Inch"))
            inch = action;
    }
    ASSERT_TRUE(inch);
    EXPECT_FALSE(inch->isChecked());
    inch->trigger();
    EXPECT_TRUE(inch->isChecked());
    EXPECT_EQ(Units::instance().system(), UnitSystem::inch);
    EXPECT_EQ(QSettings().value("window/units").toString(), QLatin1String("inch"));
    Units::instance().setSystem(UnitSystem::metric);
    QSettings().setValue("window/units", "inch");
    Units::instance().restore();
    EXPECT_EQ(Units::instance().system(), UnitSystem::inch);
}
