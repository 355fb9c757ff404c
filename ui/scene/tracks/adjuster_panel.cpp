#include "ui/scene/tracks/adjuster_panel.h"

#include "core/design/fields.h"
#include "core/design/file.h"
#include "core/design/schedules.h"
#include "core/units.h"
#include "ui/base/core_text.h"
#include "ui/base/layouts.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/base/words.h"

#include <QDoubleSpinBox>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QSlider>
#include <QTableWidget>

#include <cmath>

namespace lobewright::ui {

namespace {

constexpr double sliderStep = 0.1; ///< one step of a slider [° or mm]
enum Column { quantityColumn, leadColumn, turningColumn, movingColumn, nowColumn, baselineColumn };
constexpr int columnCount = 6;

/// A row of the table: a figure, and the figures that hold its shares.
struct Quantity {
    const char* label;
    const char* figure;
    const char* byTurning;
    const char* byMoving;
    int decimals;
    const char* unit = ""; ///< of the figure, where it is shown in the chosen units
};
constexpr Quantity quantities[] = {
    {QT_TRANSLATE_NOOP("lobewright::ui::AdjusterPanel", "Compression ratio"), "compression_ratio",
     "compression_ratio_change_phase", "compression_ratio_change_axial", 2},
    {QT_TRANSLATE_NOOP("lobewright::ui::AdjusterPanel", "Trapped compression ratio"),
     "trapped_compression_ratio", "trapped_compression_ratio_change_phase",
     "trapped_compression_ratio_change_axial", 2},
    {QT_TRANSLATE_NOOP("lobewright::ui::AdjusterPanel", "Blowdown, shaft °"), "blowdown_deg",
     "blowdown_change_phase_deg", "blowdown_change_axial_deg", 1},
    {QT_TRANSLATE_NOOP("lobewright::ui::AdjusterPanel", "Overlap, shaft °"), "overlap_deg",
     "overlap_change_phase_deg", "overlap_change_axial_deg", 1},
    {QT_TRANSLATE_NOOP("lobewright::ui::AdjusterPanel", "Exhaust opens, shaft °"),
     "exhaust_opens_deg", "", "", 1},
    {QT_TRANSLATE_NOOP("lobewright::ui::AdjusterPanel", "Inlet opens, shaft °"), "inlet_opens_deg",
     "", "", 1},
    {QT_TRANSLATE_NOOP("lobewright::ui::AdjusterPanel", "Exhaust closes, shaft °"),
     "exhaust_closes_deg", "", "", 1},
    {QT_TRANSLATE_NOOP("lobewright::ui::AdjusterPanel", "Inlet closes, shaft °"),
     "inlet_closes_deg", "", "", 1},
    {QT_TRANSLATE_NOOP("lobewright::ui::AdjusterPanel", "Shaking force, largest"),
     "shaking_force_peak_N", "", "", 0, "N"},
};

std::optional<double> valueOf(const solution::Solution* solution, const char* name) {
    const auto* figure = solution && *name ? solution->figure(name) : nullptr;
    return figure ? figure->value : std::nullopt;
}

/// What the figure would be with the adjuster at rest: the rest of the sum that the row shows.
std::optional<double> atRest(const solution::Solution* solution, const Quantity& quantity) {
    const auto now = valueOf(solution, quantity.figure);
    const auto turning = valueOf(solution, quantity.byTurning);
    const auto moving = valueOf(solution, quantity.byMoving);
    return now && turning && moving ? std::optional(*now - *turning - *moving) : std::nullopt;
}

QString shown(const std::optional<double>& value, const Quantity& quantity, bool sign) {
    if (!value)
        return {};
    if (*quantity.unit)
        return quantityText(*value, QString::fromUtf8(quantity.unit), quantity.decimals);
    const QString number = words::number(*value, quantity.decimals);
    const bool positive =
        number.contains(QRegularExpression(QStringLiteral("[1-9]"))) && *value > 0.0;
    return sign && positive ? QLatin1Char('+') + number : number;
}

} // namespace

AdjusterPanel::AdjusterPanel(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("adjusterPanel"));
    setAccessibleName(tr("Adjuster"));
    auto* grid = new QGridLayout;
    setting_ = makeControl("/mechanism/adjuster/setting_deg", tr("&Turn the exhaust track"),
                           QString(QChar(0x00B0)), 30.0, tr("Turn the exhaust track"));
    axial_ = makeControl("/mechanism/adjuster/axial_mm", tr("&Move it outward"),
                         QStringLiteral("mm"), 10.0, tr("Move the exhaust track"));
    int row = 0;
    for (Control* control : {&setting_, &axial_}) {
        auto* name = control->name = new QLabel(control->slider->accessibleName(), this);
        name->setBuddy(control->slider);
        grid->addWidget(name, row, 0);
        grid->addWidget(control->slider, row, 1);
        grid->addWidget(control->box, row, 2);
        control->slider->setAccessibleName(QString(name->text()).remove(QLatin1Char('&')));
        ++row;
    }
    refusal_ = new QLabel(this);
    refusal_->setWordWrap(true);
    refusal_->setVisible(false);
    total_ = new QLabel(this);
    total_->setWordWrap(true);
    table_ = new QTableWidget(static_cast<int>(std::size(quantities)), columnCount, this);
    table_->setHorizontalHeaderLabels({tr("Quantity"), tr("Lead alone"), tr("By turning"),
                                       tr("By moving"), tr("Now"), tr("Baseline")});
    table_->horizontalHeaderItem(leadColumn)
        ->setToolTip(tr("With the exhaust lead as it is built and the adjuster at rest; what "
                        "turning and moving add makes the value now"));
    table_->setAccessibleName(tr("What the adjuster does"));
    table_->verticalHeader()->hide();
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setSelectionMode(QAbstractItemView::NoSelection);
    table_->setShowGrid(false);
    table_->setAlternatingRowColors(true);
    columnOf(this, {grid, refusal_, total_, {table_, 1}});
    connect(&Units::instance(), &Units::changed, this, [this] {
        scaleBox(axial_);
        if (hasDesign_)
            showDesign(design::Design(design_));
    });
    fillTable();
}

AdjusterPanel::Control AdjusterPanel::makeControl(const std::string& path, const QString& label,
                                                  const QString& unit, double reach,
                                                  const QString& step) {
    Control control{path, step, unit, new QSlider(Qt::Horizontal, this), new QDoubleSpinBox(this)};
    const int steps = static_cast<int>(std::lround(reach / sliderStep));
    control.slider->setRange(-steps, steps);
    control.slider->setSingleStep(1);
    control.slider->setPageStep(10);
    control.slider->setTickInterval(steps / 2);
    control.slider->setTickPosition(QSlider::TicksBelow);
    control.slider->setMinimumWidth(120);
    control.slider->setAccessibleName(label);
    control.slider->setObjectName(QString::fromStdString(path));
    scaleBox(control);
    control.box->setKeyboardTracking(false);
    control.box->setAccessibleName(QString(label).remove(QLatin1Char('&')) + tr(", exact"));
    for (QWidget* part : std::initializer_list<QWidget*>{control.slider, control.box}) {
        part->setToolTip(tr("Changes the design at once; the table shows what that does to "
                            "compression and timing"));
    }
    connect(control.slider, &QSlider::valueChanged, this,
            [this, control](int value) { ask(control, value * sliderStep); });
    connect(control.slider, &QSlider::sliderReleased, this, &AdjusterPanel::editFinished);
    connect(control.box, &QDoubleSpinBox::valueChanged, this, [this, control](double value) {
        ask(control, unitFor(control.unit).metric(value));
        if (!showing_)
            Q_EMIT editFinished();
    });
    return control;
}

void AdjusterPanel::scaleBox(const Control& control) {
    const QSignalBlocker quiet(control.box);
    const Unit unit = unitFor(control.unit);
    control.box->setDecimals(unit.decimals(3));
    control.box->setRange(unit.shown(-360.0), unit.shown(360.0));
    control.box->setSingleStep(unit.difference(unit.step(sliderStep)));
    control.box->setSuffix(QChar(0x00A0) + unit.text);
}

void AdjusterPanel::ask(const Control& control, double value) {
    if (showing_ || !hasDesign_)
        return;
    // The hand may ask for what cannot stand (crowns that meet, ports that never close): say so
    // and leave the design as it is.
    const auto next = design::withField(design_, control.path, value);
    const Problems problems = next ? design::validate(*next) : next.problems();
    refusal_->setVisible(!problems.empty());
    if (!problems.empty()) {
        refusal_->setText(tr("Not possible: %1").arg(coreText(problems.front().message)));
        QPalette palette = refusal_->palette();
        palette.setColor(QPalette::WindowText, Palette::of(*this).warning);
        refusal_->setPalette(palette);
        return;
    }
    Edit edit;
    edit.text = control.step;
    edit.changes = {{control.path, value}};
    edit.mergeKey = QString::fromStdString(control.path);
    Q_EMIT edited(edit);
}

void AdjusterPanel::showDesign(const design::Design& design) {
    design_ = design;
    hasDesign_ = true;
    showing_ = true;
    const auto& adjuster = design.mechanism.adjuster;
    const auto put = [&](const Control& control, double value) {
        const bool follows = design::scheduleOf(design, control.path) != nullptr;
        for (QWidget* part : std::initializer_list<QWidget*>{control.slider, control.box}) {
            part->setEnabled(!follows);
            part->setToolTip(follows ? tr("Follows the speed by a schedule, which is changed on "
                                          "the strip below the torque curve")
                                     : tr("Changes the design at once; the table shows what that "
                                          "does to compression and timing"));
        }
        if (!control.slider->isSliderDown())
            control.slider->setValue(static_cast<int>(std::lround(value / sliderStep)));
        control.box->setValue(unitFor(control.unit).shown(value));
    };
    showSides(design.mechanism.isOneSided());
    put(setting_, adjuster.setting / units::degree);
    put(axial_, adjuster.axial / units::millimetre);
    showing_ = false;
    total_->setText(tr("Exhaust lead %1 + setting %2 = %3 ahead of the inlet track")
                        .arg(words::degrees(design.mechanism.exhaustLead, 2),
                             words::degrees(adjuster.setting, 2),
                             words::degrees(design.mechanism.exhaustLead + adjuster.setting, 2)));
}

/// One track has none to be turned against: it can only be moved.
void AdjusterPanel::showSides(bool isOneSided) {
    for (QWidget* part :
         std::initializer_list<QWidget*>{setting_.name, setting_.slider, setting_.box, total_})
        part->setVisible(!isOneSided);
    table_->setColumnHidden(leadColumn, isOneSided);
    table_->setColumnHidden(turningColumn, isOneSided);
    axial_.name->setText(isOneSided ? tr("&Move the track outward") : tr("&Move it outward"));
}

void AdjusterPanel::showGeometry(const GeometryPointer& geometry) {
    if (geometry)
        showDesign(geometry->design);
}

void AdjusterPanel::showSolution(const SolutionPointer& solution) {
    solution_ = solution;
    if (solution_)
        showDesign(solution_->design);
    fillTable();
}

void AdjusterPanel::showBaseline(const SolutionPointer& baseline) {
    baseline_ = baseline;
    fillTable();
}

void AdjusterPanel::fillTable() {
    table_->setColumnHidden(baselineColumn, !baseline_);
    int row = 0;
    for (const auto& quantity : quantities) {
        const auto* now = solution_.get();
        const QString cells[columnCount] = {
            tr(quantity.label),
            shown(atRest(now, quantity), quantity, false),
            shown(valueOf(now, quantity.byTurning), quantity, true),
            shown(valueOf(now, quantity.byMoving), quantity, true),
            shown(valueOf(now, quantity.figure), quantity, false),
            shown(valueOf(baseline_.get(), quantity.figure), quantity, false)};
        for (int column = 0; column < columnCount; ++column) {
            auto* item = table_->item(row, column);
            if (!item) {
                item = new QTableWidgetItem;
                item->setTextAlignment(column == 0 ? Qt::AlignLeft | Qt::AlignVCenter
                                                   : Qt::AlignRight | Qt::AlignVCenter);
                table_->setItem(row, column, item);
            }
            item->setText(cells[column]);
        }
        ++row;
    }
}

} // namespace lobewright::ui
