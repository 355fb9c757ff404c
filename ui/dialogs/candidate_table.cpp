#include "ui/dialogs/candidate_table.h"

#include "core/draft/build.h"
#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/drawing.h"
#include "ui/base/figure_text.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/dialogs/draft_picture.h"

#include <QButtonGroup>
#include <QGridLayout>
#include <QLabel>
#include <QMouseEvent>
#include <QRadioButton>

#include <algorithm>
#include <array>

namespace lobewright::ui {

namespace {

enum Row { nameRow, supplyRow, pictureRow, figureRows };
constexpr int figureCount = 6, powerFigure = 0;
constexpr int limitsRow = figureRows + figureCount;
constexpr int margin = 6;

QString figureOf(const draft::Draft& made, const char* name) {
    const auto* figure = made.solution.figure(name);
    return figure ? figureText(*figure) : CandidateTable::tr("not available");
}

/// The larger of both sides.
QString largerOf(const draft::Draft& made, const char* inlet, const char* exhaust) {
    const auto* first = made.solution.figure(inlet);
    const auto* second = made.solution.figure(exhaust);
    if (!first || !second)
        return CandidateTable::tr("not available");
    const bool isSecond = second->value.value_or(0.0) > first->value.value_or(0.0);
    return figureText(isSecond ? *second : *first);
}

std::array<QString, figureCount> labels() {
    return {CandidateTable::tr("Power"),           CandidateTable::tr("Shaft speed"),
            CandidateTable::tr("Displacement"),    CandidateTable::tr("Outer diameter"),
            CandidateTable::tr("Supply pressure"), CandidateTable::tr("Contact stress")};
}

std::array<QString, figureCount> figures(const draft::Draft& made) {
    const auto& design = made.design;
    return {figureOf(made, "brake_power_kW"),
            quantityText(design.running.speed / units::revPerMinute, QStringLiteral("rpm")),
            figureOf(made, "displacement_cm3"),
            quantityText(draft::outerDiameter(design) / units::millimetre, QStringLiteral("mm")),
            quantityText(design.gas.supply.pressure / units::bar, QStringLiteral("bar")),
            largerOf(made, "peak_contact_pressure_inlet_MPa", "peak_contact_pressure_exhaust_MPa")};
}

QString lobesText(int lobes) {
    return lobes == 1 ? CandidateTable::tr("1 lobe") : CandidateTable::tr("%1 lobes").arg(lobes);
}

bool isBoosted(const draft::Draft& made) {
    return made.charging == study::Charging::boosted;
}

bool allFireTogether(const draft::Draft& made) {
    return made.solution.check("all-fire-together") != nullptr;
}

/// What tells candidates of the same lobes apart.
QString supplyText(const draft::Draft& made) {
    const int cylinders = made.design.mechanism.cylinders;
    const QString second = cylinders == 1 ? CandidateTable::tr("1 cylinder")
                                          : CandidateTable::tr("%1 cylinders").arg(cylinders);
    QStringList lines{second};
    if (made.charging) {
        lines << (isBoosted(made) ? CandidateTable::tr("boosted")
                                  : CandidateTable::tr("not boosted"));
    }
    return lines.join(QLatin1Char('\n'));
}

void tint(QLabel& label, const QColor& colour) {
    QPalette palette = label.palette();
    palette.setColor(QPalette::WindowText, colour);
    label.setPalette(palette);
}

/// Whether the power asked for is not reached; the remarks below the table say why.
bool missesPower(const draft::Draft& made) {
    return std::ranges::any_of(made.comparisons, [](const draft::Comparison& row) {
        return row.name == "brake_power_kW" && !row.why.empty();
    });
}

/// How many limits the candidate exceeds, with the sentences as the help of the label.
QLabel* limitsLabel(const draft::Draft& made, QWidget* parent) {
    QStringList exceeded;
    bool isError = false;
    for (const auto& check : made.solution.checks) {
        if (check.severity == solution::Severity::remark)
            continue;
        exceeded << coreText(check.message);
        isError = isError || check.severity == solution::Severity::error;
    }
    QString text =
        exceeded.isEmpty() && allFireTogether(made) ? CandidateTable::tr("all fire at once")
        : exceeded.isEmpty()                        ? CandidateTable::tr("no limit exceeded")
        : exceeded.size() == 1                      ? CandidateTable::tr("1 limit exceeded")
                               : CandidateTable::tr("%1 limits exceeded").arg(exceeded.size());
    // In two lines; wrapping would let the grid forget how high its rows are.
    const auto middle = text.lastIndexOf(QLatin1Char(' '));
    auto* label = new QLabel(text.replace(middle, 1, QLatin1Char('\n')), parent);
    label->setToolTip(exceeded.join(QLatin1Char('\n')));
    const Palette& tones = Palette::of(*parent);
    tint(*label, isError ? tones.warning : tones.quiet);
    return label;
}

} // namespace

CandidateTable::CandidateTable(QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
    setAccessibleName(tr("Candidates"));
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    grid_->setContentsMargins(0, margin, margin, margin);
    grid_->setHorizontalSpacing(2 * margin + 4);
    grid_->setVerticalSpacing(4);
}

void CandidateTable::clear() {
    while (QLayoutItem* item = grid_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    columns_.clear();
    delete buttons_;
    buttons_ = new QButtonGroup(this);
    connect(buttons_, &QButtonGroup::idToggled, this, [this](int candidate, bool isOn) {
        update();
        if (isOn)
            Q_EMIT chosenChanged(candidate);
    });
}

void CandidateTable::show(const std::vector<draft::Draft>& drafts) {
    clear();
    if (drafts.empty())
        return;
    addLabels();
    double largest = 0.0;
    for (const draft::Draft& made : drafts)
        largest = std::max(largest, draft::outerDiameter(made.design));
    for (const draft::Draft& made : drafts)
        addColumn(made, largest);
    for (int column = 0; column < grid_->columnCount(); ++column)
        grid_->setColumnStretch(column, 0);
    grid_->setColumnStretch(static_cast<int>(drafts.size()) + 1, 1);
    grid_->setRowStretch(pictureRow, 1);
}

void CandidateTable::addLabels() {
    const auto words = labels();
    for (int i = 0; i < figureCount; ++i) {
        auto* label = new QLabel(words[static_cast<std::size_t>(i)], this);
        tint(*label, Palette::of(*this).quiet);
        grid_->addWidget(label, figureRows + i, 0);
    }
}

void CandidateTable::addColumn(const draft::Draft& made, double largest) {
    const auto candidate = static_cast<int>(buttons_->buttons().size());
    const int column = candidate + 1;
    auto& all = columns_.emplace_back();
    const auto add = [&](QWidget* widget, int row) {
        grid_->addWidget(widget, row, column);
        all.push_back(widget);
    };
    auto* button = new QRadioButton(lobesText(made.design.tracks.inlet.lobes), this);
    button->setObjectName(QStringLiteral("candidate%1").arg(candidate));
    describe(*button,
             button->text() + QStringLiteral(", ") +
                 supplyText(made).replace(QLatin1Char('\n'), QStringLiteral(", ")),
             tr("Choose this candidate"));
    buttons_->addButton(button, candidate);
    add(button, nameRow);
    auto* supply = new QLabel(supplyText(made), this);
    tint(*supply, Palette::of(*this).quiet);
    add(supply, supplyRow);
    add(new DraftPicture(made.design, isBoosted(made), largest, this), pictureRow);
    const auto values = figures(made);
    for (int i = 0; i < figureCount; ++i) {
        auto* value = new QLabel(values[static_cast<std::size_t>(i)], this);
        value->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
        if (i == powerFigure && missesPower(made))
            tint(*value, Palette::of(*this).warning);
        add(value, figureRows + i);
    }
    add(limitsLabel(made, this), limitsRow);
}

int CandidateTable::chosen() const {
    return buttons_ ? buttons_->checkedId() : -1;
}

void CandidateTable::choose(int candidate) {
    if (auto* button = buttons_ ? buttons_->button(candidate) : nullptr)
        button->setChecked(true);
}

QRect CandidateTable::columnRect(int candidate) const {
    QRect all;
    for (const QWidget* widget : columns_[static_cast<std::size_t>(candidate)])
        all |= widget->geometry();
    return all.adjusted(-margin, -margin + 1, margin, margin - 1);
}

void CandidateTable::paintEvent(QPaintEvent*) {
    if (!buttons_)
        return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Palette& tones = Palette::of(*this);
    for (int i = 0; i < static_cast<int>(buttons_->buttons().size()); ++i) {
        const bool isChosen = i == chosen();
        fillAndOutline(painter, tones.paper,
                       QPen(isChosen ? palette().color(QPalette::Highlight) : tones.grid,
                            isChosen ? 2.0 : 1.0));
        painter.drawRoundedRect(QRectF(columnRect(i)).adjusted(1.0, 1.0, -1.0, -1.0), 5.0, 5.0);
    }
}

void CandidateTable::mousePressEvent(QMouseEvent* event) {
    if (!buttons_)
        return;
    for (int i = 0; i < static_cast<int>(buttons_->buttons().size()); ++i) {
        if (columnRect(i).contains(event->pos())) {
            buttons_->button(i)->click();
            buttons_->button(i)->setFocus();
        }
    }
}

} // namespace lobewright::ui
