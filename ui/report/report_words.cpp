#include "ui/report/report_words.h"

#include "core/design/fields.h"
#include "core/design/schedules.h"
#include "core/text/caution.h"
#include "ui/base/core_text.h"
#include "ui/base/figure_text.h"
#include "ui/base/units.h"
#include "ui/panels/figures_panel.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Report)
};

using Rows = std::vector<Sheet::Row>;

constexpr const char* mainNames[] = {"brake_power_kW",
                                     "brake_torque_Nm",
                                     "brake_efficiency",
                                     "brake_specific_fuel_g_per_kWh",
                                     "imep_bar",
                                     "bmep_bar",
                                     "fmep_bar",
                                     "peak_pressure_bar",
                                     "peak_temperature_K",
                                     "knock_integral",
                                     "torque_ripple",
                                     "displacement_cm3",
                                     "compression_ratio",
                                     "trapped_compression_ratio",
                                     "mean_piston_speed_inlet_m_per_s",
                                     "delivery_ratio",
                                     "scavenging_efficiency",
                                     "trapping_efficiency",
                                     "supply_power_kW",
                                     "compressor_speed_rpm",
                                     "compressor_pressure_ratio",
                                     "compressor_corrected_flow_kg_per_s",
                                     "compressor_efficiency",
                                     "compressor_surge_margin",
                                     "compressor_power_kW",
                                     "turbine_power_kW",
                                     "exhaust_plenum_pressure_bar",
                                     "pump_work_J",
                                     "pump_pressure_low_bar",
                                     "pump_pressure_high_bar",
                                     "crankcase_compression_ratio",
                                     "fuel_lost_share",
                                     "peak_contact_pressure_inlet_MPa",
                                     "peak_contact_pressure_exhaust_MPa",
                                     "contact_safety_inlet",
                                     "contact_safety_exhaust",
                                     "peak_pressure_angle_inlet_deg",
                                     "peak_pressure_angle_exhaust_deg",
                                     "contact_speed_low_fired_rpm",
                                     "contact_speed_high_fired_rpm",
                                     "shaking_force_peak_N",
                                     "rocking_moment_peak_Nm"};
constexpr const char* timingNames[] = {"exhaust_opens_deg",  "inlet_opens_deg", "inlet_closes_deg",
                                       "exhaust_closes_deg", "blowdown_deg",    "overlap_deg",
                                       "after_charge_deg"};

/// "1.2 kW", "5°", with a true minus sign.
QString withUnit(QString number, const QString& unit) {
    number.replace(QLatin1Char('-'), QChar(0x2212));
    return number + (unit.isEmpty() || unit.startsWith(QChar(0xB0)) ? QString() : QString(' ')) +
           unit;
}

/// Without the references in brackets, which are among the assumptions.
QString shortLabel(const solution::Figure& figure) {
    QString label = coreText(figure.label).section(" (", 0, 0);
    if (label.endsWith(QLatin1Char(',')))
        label.chop(1);
    return label;
}

QString valueOf(const solution::Figure& figure) {
    if (!figure.value || figure.isYesNo)
        return figureText(figure);
    const Unit unit = unitFor(*figure.unit);
    return withUnit(figureText(unit.shown(*figure.value)), unit.text);
}

void addFigure(Rows& rows, const solution::Solution& solution, const char* name) {
    if (const auto* figure = solution.figure(name))
        rows.push_back({shortLabel(*figure), valueOf(*figure)});
}

void addChange(Rows& rows, const solution::Solution& now, const solution::Solution& before,
               const char* name) {
    const auto* figure = now.figure(name);
    const auto* old = before.figure(name);
    if (!figure || !old)
        return;
    const QString value = valueOf(*figure), oldValue = valueOf(*old);
    const auto change = figureChange(*figure, *old, 360.0 / now.pair.cyclesPerTurn());
    if (change.isEqual() || value == oldValue)
        return;
    QString text = Words::tr("%1, baseline %2").arg(value, oldValue);
    if (!change.text.isEmpty())
        text += QStringLiteral(" (") + change.text + QLatin1Char(')');
    rows.push_back({shortLabel(*figure), text});
}

void addEvent(Rows& rows, const solution::Solution& solution, const std::string& key) {
    const auto* shaft = solution.figure(key + "_deg");
    const auto* cycle = solution.figure(key + "_cycle_deg");
    if (shaft && cycle && shaft->value && cycle->value) {
        rows.push_back({coreText(shaft->label),
                        Words::tr("%1° shaft, %2° cycle")
                            .arg(withUnit(QLocale().toString(*shaft->value, 'f', 2), {}),
                                 withUnit(QLocale().toString(*cycle->value, 'f', 2), {}))});
    }
}

QString fieldText(const design::Field& field) {
    struct {
        const design::Field& field;
        QString operator()(double value) const {
            const Unit unit = unitFor(field.unit);
            return localNumbers(QString::number(unit.shown(value), 'g', unit.isMetric() ? 10 : 7));
        }
        QString operator()(int value) const { return QString::number(value); }
        QString operator()(bool value) const { return value ? Words::tr("yes") : Words::tr("no"); }
        QString operator()(std::monostate) const { return Words::tr("not given"); }
        QString operator()(const std::string& value) const {
            const TextId label = design::choiceLabel(field, value);
            return label.empty() ? QString::fromStdString(value) : coreText(label);
        }
    } const text{field};
    const QString shown = std::visit(text, field.value);
    const bool isNumber =
        std::holds_alternative<double>(field.value) || std::holds_alternative<int>(field.value);
    return isNumber ? withUnit(shown, unitFor(field.unit).text) : shown;
}

/// "Tracks, segment 3" from the labels of the sections on the way.
QString sectionTitle(const design::Design& design, const design::Field& field) {
    const QString label = coreText(field.groupLabel);
    const std::string english = field.groupLabel.english();
    // Only the ports of an engine with one track have two sides.
    if (design.mechanism.isOneSided() && !field.group.starts_with("/ports"))
        return label;
    const bool exhaust = field.group.find("/exhaust") != std::string::npos;
    const bool inlet = field.group.find("/inlet") != std::string::npos;
    if (exhaust && english.find("xhaust") == std::string::npos)
        return Words::tr("Exhaust side, %1").arg(inSentence(label));
    if (inlet && english.find("nlet") == std::string::npos)
        return Words::tr("Inlet side, %1").arg(inSentence(label));
    return label;
}

QString compressorWords(const gas::Compressor& compressor) {
    QString text = Words::tr("Radial compressor wheel, quasi-steady on curves of head and "
                             "efficiency over the flow coefficient (radial blades: Cohen, Rogers "
                             "and Saravanamuttoo, Gas Turbine Theory, ch. 4: secondary values), "
                             "into an adiabatic plenum.");
    const auto add = [&text](const QString& more) { text += QLatin1Char(' ') + more; };
    if (compressor.stages == gas::Stages::wheelThenBlower)
        add(Words::tr("A positive-displacement blower follows the wheel."));
    if (compressor.drive == gas::WheelDrive::turbine) {
        add(Words::tr("A turbine behind an adiabatic exhaust plenum drives the wheel, its "
                      "efficiency a parabola of the speed ratio; the wheel turns where the powers "
                      "meet. What the shaft drives is deducted from brake values."));
    } else
        add(Words::tr("The power is deducted from brake values."));
    add(Words::tr("No pipes modelled: a tuned exhaust can breathe better, or worse."));
    return text;
}

QString pumpWords(const gas::Pump& pump) {
    return pump.skirtRow
               ? Words::tr("The space under the pistons as pump: filled through a row that the "
                           "skirt uncovers, quasi-steady and both ways, emptied through the inlet "
                           "ports, with instant mixing; no pipes. The work on the backs of the "
                           "pistons is deducted from brake values.")
               : Words::tr("The space under the pistons as pump: adiabatic, filled through a "
                           "quasi-steady reed, emptied through the inlet ports, with instant "
                           "mixing; no pipes. The work on the backs of the pistons is deducted "
                           "from brake values.");
}

std::vector<std::pair<QString, QString>> gasAssumptions(const design::Design& design) {
    const auto& gas = design.gas;
    std::vector<std::pair<QString, QString>> all;
    all.emplace_back(
        Words::tr("Gas cycle"),
        Words::tr("Single zone; air and products of stoichiometric combustion, thermally perfect "
                  "(GRI-Mech 3.0 polynomials). No dissociation and no carbon monoxide in the "
                  "products: the peak temperature is high by 100 to 250 K near λ = 1 (Heywood, "
                  "Internal Combustion Engine Fundamentals, ch. 4), and λ < 0.9 is outside the "
                  "model. Solved to cyclic steady state."));
    if (!design.running.motored) {
        all.emplace_back(Words::tr("Combustion"),
                         Words::tr("Wiebe function, not normalised: the remainder exp(−a) never "
                                   "burns (Heywood, ch. 9). Start and duration are settings, not "
                                   "predictions."));
    }
    if (gas.wallHeat.model == gas::WallHeatModel::woschni) {
        all.emplace_back(
            Words::tr("Wall heat"),
            Words::tr("Woschni (SAE 670931; constants as in Heywood, § 12.4.3: secondary values, "
                      "not checked against the printed source), wall temperatures as given."));
    } else if (gas.wallHeat.model == gas::WallHeatModel::hohenberg) {
        all.emplace_back(Words::tr("Wall heat"),
                         Words::tr("Hohenberg (SAE 790825: secondary values, not checked against "
                                   "the printed source), wall temperatures as given."));
    } else
        all.emplace_back(Words::tr("Wall heat"), Words::tr("None: the walls take no heat."));
    const auto model = gas.scavenging.model;
    const QString scavenging = model == gas::ScavengingModel::perfectMixing
                                   ? Words::tr("Perfect mixing")
                               : model == gas::ScavengingModel::perfectDisplacement
                                   ? Words::tr("Perfect displacement")
                                   : Words::tr("Displacement, then mixing");
    all.emplace_back(Words::tr("Gas exchange"),
                     Words::tr("%1 (after Benson and Brandham 1969), ports as isentropic orifices "
                               "with the discharge coefficients given; no pressure waves in the "
                               "ducts. Ratios refer to ambient density times swept volume "
                               "(Heywood, § 6.6; ISO 15550 reference state unless given).")
                         .arg(scavenging));
    const bool blown = gas.supply.kind == gas::SupplyKind::blower;
    all.emplace_back(
        Words::tr("Air supply"),
        gas.supply.kind == gas::SupplyKind::underPiston  ? pumpWords(gas.supply.pump)
        : gas.supply.kind == gas::SupplyKind::compressor ? compressorWords(gas.supply.compressor)
        : blown ? Words::tr("Positive-displacement blower with constant volumetric and isentropic "
                            "efficiency into an adiabatic plenum; its power is deducted from brake "
                            "values.")
        : gas.supply.unpaid
            ? Words::tr("Reservoir at constant pressure; supply power NOT counted in brake values.")
            : Words::tr("Reservoir at constant pressure; what it takes to fill it above ambient "
                        "pressure is deducted from brake values."));
    return all;
}

} // namespace

std::vector<Sheet::Row> changedFigures(const solution::Solution& now,
                                       const solution::Solution& before) {
    Rows rows;
    for (const char* name : mainNames)
        addChange(rows, now, before, name);
    for (const char* name : timingNames)
        addChange(rows, now, before, name);
    return rows;
}

std::vector<Sheet::Row> changedNumbers(const design::Design& now, const design::Design& before) {
    Rows rows;
    const auto name = [&now](const design::Field& field) {
        const QString section = sectionTitle(now, field);
        const QString label = coreText(field.label);
        return section.isEmpty() ? label : section + QStringLiteral(": ") + inSentence(label);
    };
    for (const design::Field& field : design::fields(now)) {
        const auto old = design::findField(before, field.path);
        if (!old) {
            rows.push_back(
                {name(field), Words::tr("%1, not in the baseline").arg(fieldText(field))});
        } else if (!(old->value == field.value)) {
            rows.push_back(
                {name(field), Words::tr("%1, baseline %2").arg(fieldText(field), fieldText(*old))});
        }
    }
    for (const design::Field& old : design::fields(before)) {
        if (!design::findField(now, old.path))
            rows.push_back({name(old), Words::tr("removed, baseline %1").arg(fieldText(old))});
    }
    return rows;
}

std::vector<Sheet::Row> mainFigures(const solution::Solution& solution) {
    Rows rows;
    for (const char* name : mainNames)
        addFigure(rows, solution, name);
    return rows;
}

std::vector<Sheet::Row> timingFigures(const solution::Solution& solution) {
    Rows rows;
    for (const char* key : {"inner_dead_centre", "exhaust_opens", "inlet_opens",
                            "outer_dead_centre", "exhaust_closes", "inlet_closes", "blowdown",
                            "overlap", "after_charge", "inlet_open", "exhaust_open"})
        addEvent(rows, solution, key);
    for (const char* name : {"blowdown_ms", "overlap_ms", "blowdown_time_area_s_per_m",
                             "inlet_time_area_s_per_m", "exhaust_time_area_s_per_m"})
        addFigure(rows, solution, name);
    return rows;
}

std::vector<Sheet::Row> designNumbers(const design::Design& design) {
    // A field beside sections of its own section comes back to it.
    std::vector<Rows> sections;
    for (const design::Field& field : design::fields(design)) {
        if (field.path == "/title" || field.path == "/notes")
            continue;
        const QString title = sectionTitle(design, field);
        auto section = std::ranges::find_if(
            sections, [&](const Rows& rows) { return rows.front().name == title; });
        if (section == sections.end())
            section = sections.insert(sections.end(), {{title, {}, true}});
        const bool follows = design::scheduleOf(design, field.path) != nullptr;
        section->push_back({follows ? Words::tr("%1, follows the speed").arg(coreText(field.label))
                                    : coreText(field.label),
                            fieldText(field)});
    }
    Rows all;
    for (const Rows& rows : sections)
        all.insert(all.end(), rows.begin(), rows.end());
    return all;
}

std::vector<std::pair<QString, QString>> assumptions(const solution::Solution& solution) {
    const auto& design = solution.design;
    std::vector<std::pair<QString, QString>> all = {
        {Words::tr("Motion"),
         Words::tr("Lift curves in closed form after VDI 2143-1 and Norton, Cam Design and "
                   "Manufacturing Handbook; rigid parts, the roller always on its track.")},
        {Words::tr("Roller on track"),
         Words::tr("Exact spatial contact of a cylindrical roller with a radial axis; figures at "
                   "the inner edge, the middle and the outer edge of the width.")}};
    for (auto& entry : gasAssumptions(design))
        all.push_back(std::move(entry));
    if (!design.running.motored && design.gas.fuel == gas::Fuel::petrol) {
        all.emplace_back(
            Words::tr("Knock"),
            Words::tr("Livengood–Wu integral with the Douaud–Eyzat delay (SAE 780080; Heywood, eq. "
                      "9.59: secondary values, not checked against the printed source)."));
    }
    all.emplace_back(
        Words::tr("Friction"),
        Words::tr("Rings by a Stribeck-like law (form after Stanley et al., SAE 1999-01-0974; "
                  "constants not checked against the printed source), guide, rolling, slip across "
                  "the roller and bearings by coefficients; defaults are own estimates."));
    all.emplace_back(
        Words::tr("Contact"),
        Words::tr(
            "Hertz (Johnson, Contact Mechanics, ch. 4), load spread evenly over the width, so "
            "nominal; film after Dowson 1968 or Hamrock and Dowson 1977; allowable stress as ISO "
            "6336-5 lists it (secondary value, not checked against the printed source)."));
    all.emplace_back(Words::tr("Roller bearing"),
                     Words::tr("ISO 281 rating life with exponent 10/3, a₁ = 1 and no lubrication "
                               "factor; static limit after ISO 76."));
    all.emplace_back(Words::tr("How exact"),
                     Words::tr("The equations are solved to about 1e−6; correlations, discharge "
                               "coefficients and scavenging models are good to perhaps ±10 to "
                               "20 % (common practice)."));
    return all;
}

std::vector<QString> cautionTexts() {
    return {coreText(caution()),
            Words::tr("Contact figures are nominal: they compare designs and never release one for "
                      "manufacture."),
            Words::tr("Have a qualified engineer review the design before metal is cut."),
            Words::tr("Running engines burst, burn and throw parts.")};
}

} // namespace lobewright::ui
