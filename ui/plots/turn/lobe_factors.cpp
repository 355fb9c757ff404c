#include "ui/plots/turn/lobe_factors.h"

#include "core/editing/knot_edits.h"
#include "core/motion/jumps.h"
#include "core/motion/motion_law.h"
#include "core/motion/strokes.h"
#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/figure_text.h"
#include "ui/base/layouts.h"
#include "ui/base/type_scale.h"
#include "ui/base/units.h"
#include "ui/plots/base/angle_ticks.h"
#include "ui/plots/base/plot_export.h"
#include "ui/plots/turn/motion_curve.h"

#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QKeyEvent>
#include <QSplitter>

#include <cmath>

namespace lobewright::ui {

namespace {

QString factorText(double value) {
    return std::isinf(value) ? QString(QChar(0x221E))
                             : localNumbers(QString::number(value, 'f', 3));
}

/// A row of the table of factors before it is put in words.
struct FactorRow {
    QString what, law;
    double begin = 0.0; ///< track angle [rad]
    motion::Stroke stroke;
};

QString moves(bool rises) {
    return rises ? LobeFactors::tr("rise") : LobeFactors::tr("return");
}

/// Segments by their laws; other descriptions by what they do between turning points.
std::vector<FactorRow> rowsOf(const design::Design& design, const motion::LiftCurve& curve,
                              End end) {
    std::vector<FactorRow> rows;
    const auto* shape = std::get_if<motion::SegmentShape>(&design.tracks[end].shape);
    if (!shape) {
        for (const motion::Stroke& stroke : motion::strokes(curve)) {
            rows.push_back(
                {LobeFactors::tr("%1 from %2°")
                     .arg(moves(stroke.rises), degreesText(stroke.begin / units::degree)),
                 LobeFactors::tr("free-form"), stroke.begin, stroke});
        }
        return rows;
    }
    std::vector<double> begins{0.0};
    for (const motion::Segment& segment : shape->segments)
        begins.push_back(begins.back() + segment.span);
    for (const motion::SegmentPeaks& peaks : motion::segmentPeaks(*shape)) {
        const auto index = static_cast<size_t>(peaks.segment);
        const motion::Segment& segment = shape->segments[index];
        motion::Stroke stroke;
        stroke.rises = segment.kind == motion::SegmentKind::rise;
        stroke.span = segment.span;
        stroke.lift = std::abs(curve.before(begins[index + 1]).y - curve.at(begins[index]).y);
        stroke.velocity = peaks.velocity;
        stroke.acceleration = peaks.acceleration;
        stroke.jerk = peaks.jerk;
        stroke.factors = peaks.factors;
        rows.push_back({LobeFactors::tr("%1 %2").arg(peaks.segment + 1).arg(moves(stroke.rises)),
                        coreText(motion::rowOf(segment.law).label), begins[index], stroke});
    }
    return rows;
}

} // namespace

LobeTable::LobeTable(const QStringList& columns, QWidget* parent)
    : QTableWidget(0, static_cast<int>(columns.size()), parent) {
    setHorizontalHeaderLabels(columns);
    setFrameShape(QFrame::NoFrame);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setShowGrid(false);
    const QFont small = sized(font(), TypeSize::small);
    setFont(small);
    horizontalHeader()->setFont(small);
    horizontalHeaderItem(0)->setTextAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(QFontMetrics(small).height() + 4);
    horizontalHeader()->setDefaultAlignment(Qt::AlignRight | Qt::AlignVCenter);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setMinimumSectionSize(20);
    connect(this, &QTableWidget::cellClicked, this,
            [this](int row) { Q_EMIT angleWanted(item(row, 0)->data(Qt::UserRole).toDouble()); });
}

void LobeTable::addRow(const QStringList& cells, double theta, const QString& help) {
    const int row = rowCount();
    insertRow(row);
    for (int column = 0; column < columnCount(); ++column) {
        auto* cell = new QTableWidgetItem(cells.value(column));
        const bool isName = column < 1;
        cell->setTextAlignment((isName ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
        cell->setData(Qt::UserRole, theta);
        cell->setToolTip(help);
        setItem(row, column, cell);
    }
}

void LobeTable::fitColumns() {
    resizeColumnsToContents();
    horizontalHeader()->setStretchLastSection(false);
}

QString LobeTable::text() const {
    QStringList lines;
    QStringList head;
    for (int column = 0; column < columnCount(); ++column)
        head << horizontalHeaderItem(column)->text();
    lines << head.join(QLatin1Char('\t'));
    for (int row = 0; row < rowCount(); ++row) {
        QStringList cells;
        for (int column = 0; column < columnCount(); ++column)
            cells << item(row, column)->text();
        lines << cells.join(QLatin1Char('\t'));
    }
    return lines.join(QLatin1Char('\n'));
}

void LobeTable::keyPressEvent(QKeyEvent* event) {
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (event->matches(QKeySequence::Copy)) {
        QApplication::clipboard()->setText(text());
    } else if (isEnter && currentRow() >= 0) {
        Q_EMIT angleWanted(item(currentRow(), 0)->data(Qt::UserRole).toDouble());
    } else {
        QTableWidget::keyPressEvent(event);
    }
}

LobeFactors::LobeFactors(TurnCursor& cursor, QWidget* parent)
    : QWidget(parent),
      factors_(new LobeTable({tr("Rise, return"), tr("Law"), tr("Lift"), tr("Span, °"),
                              QStringLiteral("C_v"), QStringLiteral("C_a"), QStringLiteral("C_j"),
                              QStringLiteral("C_m"), QString(), QString(), QString()},
                             this)),
      junctions_(
          new LobeTable({tr("Junction"), tr("At, °"), QString(), QString(), QString()}, this)) {
    nameColumns();
    connect(&Units::instance(), &Units::changed, this, [this] {
        nameColumns();
        if (geometry_)
            showGeometry(GeometryPointer(geometry_));
    });
    describe(*factors_, tr("Characteristic factors of every rise and return"),
             tr("For unit lift over unit span: peak velocity C_v, acceleration C_a, "
                "jerk C_j (∞ where the acceleration jumps) and velocity × "
                "acceleration C_m; beside them the peaks at this speed. Click: go "
                "there. Ctrl+C copies."));
    describe(*junctions_, tr("Jumps where segments or knots meet"),
             tr("A jump of velocity is an error, of acceleration a warning, of jerk "
                "a remark. Click: go there. Ctrl+C copies."));
    auto* split = new QSplitter(Qt::Vertical, this);
    split->addWidget(factors_);
    split->addWidget(junctions_);
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 2);
    columnOf(this, {0, 0, 0, 0}, -1, {split});
    setFocusProxy(factors_);
    for (LobeTable* table : {factors_, junctions_})
        connect(table, &LobeTable::angleWanted, &cursor, &TurnCursor::setAngle);
}

void LobeFactors::nameColumns() {
    const QString derivatives[] = {QStringLiteral("m/s"), QStringLiteral("m/s²"),
                                   QStringLiteral("m/s³")};
    const QString symbols[] = {QStringLiteral("v"), QStringLiteral("a"), QStringLiteral("j")};
    const QString jumps[] = {tr("Jump of v"), tr("of a"), tr("of j")};
    factors_->horizontalHeaderItem(2)->setText(axisText(tr("Lift"), QStringLiteral("mm")));
    for (int order = 0; order < 3; ++order) {
        factors_->horizontalHeaderItem(8 + order)->setText(
            axisText(symbols[order], derivatives[order]));
        junctions_->horizontalHeaderItem(2 + order)->setText(
            axisText(jumps[order], derivatives[order]));
    }
}

void LobeFactors::showSolution(const SolutionPointer& solution) {
    if (solution)
        showGeometry(geometryOf(*solution));
}

void LobeFactors::showGeometry(const GeometryPointer& geometry) {
    geometry_ = geometry;
    for (LobeTable* table : {factors_, junctions_})
        table->setRowCount(0);
    for (const End end : bothEnds) {
        if (end == End::exhaust && !geometry->design.tracks.exhaust)
            continue;
        fillFactors(*geometry, end);
        fillJunctions(*geometry, end);
    }
    for (LobeTable* table : {factors_, junctions_})
        table->fitColumns();
}

void LobeFactors::fillFactors(const Geometry& geometry, End end) {
    const double omega = geometry.design.running.speed;
    const QString track =
        geometry.design.tracks.exhaust
            ? coreText(editing::trackLabel(geometry.design, end)) + QStringLiteral(", ")
            : QString();
    const Unit length = unitFor(QStringLiteral("mm")), speed = unitFor(QStringLiteral("m/s"));
    const auto lift = [&](double metres) {
        return localNumbers(
            QString::number(length.shown(metres / units::millimetre), 'f', length.decimals(2)));
    };
    for (const FactorRow& row : rowsOf(geometry.design, geometry.pair.curve(end), end)) {
        const motion::Stroke& s = row.stroke;
        const double jerk =
            std::isinf(s.factors.jerk) ? s.factors.jerk : s.jerk * std::pow(omega, 3);
        const double theta = shaftAngles(geometry.pair, end, row.begin).front();
        factors_->addRow(
            {track + row.what, row.law, lift(s.lift),
             localNumbers(QString::number(s.span / units::degree, 'f', 2)),
             factorText(s.factors.velocity), factorText(s.factors.acceleration),
             factorText(s.factors.jerk), factorText(s.factors.torque),
             figureText(speed.shown(s.velocity * omega)),
             figureText(speed.shown(s.acceleration * omega * omega)),
             std::isinf(jerk) ? QString(QChar(0x221E)) : figureText(speed.shown(jerk))},
            theta, factors_->toolTip());
    }
}

void LobeFactors::fillJunctions(const Geometry& geometry, End end) {
    const double omega = geometry.design.running.speed;
    const motion::LiftCurve& curve = geometry.pair.curve(end);
    const QString track =
        geometry.design.tracks.exhaust
            ? coreText(editing::trackLabel(geometry.design, end)) + QStringLiteral(", ")
            : QString();
    // One row for a junction that jumps in anything.
    std::array<std::vector<motion::Jump>, 3> all;
    for (int order = 1; order <= 3; ++order)
        all[static_cast<size_t>(order - 1)] = motion::jumps(curve, order);
    for (const motion::Junction& junction : curve.junctions()) {
        QStringList cells{track + (junction.insideLaw
                                       ? tr("inside %1").arg(junction.segment + 1)
                                       : tr("start of %1").arg(junction.segment + 1)),
                          degreesText(junction.angle / units::degree, 2)};
        bool any = false;
        for (size_t order = 0; order < all.size(); ++order) {
            const auto found = std::ranges::find(all[order], junction.angle, &motion::Jump::angle);
            const bool jumps = found != all[order].end();
            any = any || jumps;
            cells << (jumps ? figureText(unitFor(QStringLiteral("m/s")).factor * found->change() *
                                         std::pow(omega, static_cast<double>(order) + 1.0))
                            : QStringLiteral("–"));
        }
        if (any) {
            junctions_->addRow(cells, shaftAngles(geometry.pair, end, junction.angle).front(),
                               junctions_->toolTip());
        }
    }
}

void LobeFactors::addOptions(QMenu& menu) {
    addPictureActions(menu, *this, tr("Factors and junctions"));
}

} // namespace lobewright::ui
