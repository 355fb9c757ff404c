#include "ui/scene/walk/stage_strip.h"

#include "core/units.h"
#include "ui/base/drawing.h"
#include "ui/base/type_scale.h"
#include "ui/base/units.h"
#include "ui/base/watching.h"
#include "ui/scene/section/gas_tone.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>

#include <algorithm>

namespace lobewright::ui {

namespace {

constexpr double gap = 4.0;        ///< between cells [px]
constexpr double headShare = 0.25; ///< thickness of a head as drawn, of the cylinder's length

} // namespace

StageStrip::StageStrip(TurnCursor& cursor, QWidget* parent) : QWidget(parent), cursor_(cursor) {
    setObjectName(QStringLiteral("stageStrip"));
    setAccessibleName(tr("Stages of the cycle"));
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    connect(&cursor_, &TurnCursor::angleChanged, this, &StageStrip::follow);
    connect(&Units::instance(), &Units::changed, this, &StageStrip::refresh);
    helpByPlace(*this, [this](const QPoint& at) { return helpAt(at); });
}

void StageStrip::showGeometry(const GeometryPointer& geometry) {
    engine_.setGeometry(geometry);
    refresh();
}

void StageStrip::showSolution(const SolutionPointer& solution) {
    engine_.setSolution(solution);
    refresh();
}

void StageStrip::setCylinder(int index) {
    cylinder_ = index;
    follow();
}

void StageStrip::refresh() {
    steps_ = walkSteps(engine_);
    chosen_ = std::min(chosen_, stages() - 1);
    present_ = -1;
    follow();
    update();
}

void StageStrip::follow() {
    if (steps_.empty())
        return;
    const double theta = engine_.angleOfCylinder(cylinder_, cursor_.angle()) + atEvent;
    const int now = lastPassed(steps_, theta, engine_.pair().period()).index;
    if (now == present_)
        return;
    present_ = now;
    if (!cursor_.isPlaying())
        announce(now);
    update();
    Q_EMIT presentChanged(now);
}

void StageStrip::announce(int index) {
    if (index < 0 || index >= stages())
        return;
    setAccessibleDescription(stage(index).title);
    QAccessibleEvent changed(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&changed);
}

QRectF StageStrip::cell(int index) const {
    const double wide = (width() - gap) / std::max(1.0, static_cast<double>(stages()));
    return QRectF(gap + index * wide, gap, wide - gap, height() - 2.0 * gap);
}

void StageStrip::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Palette& tones = Palette::of(*this);
    painter.fillRect(rect(), tones.panel);
    if (steps_.empty()) {
        painter.setPen(tones.quiet);
        painter.drawText(rect(), Qt::AlignCenter, tr("No design to draw yet"));
    }
    for (int i = 0; i < stages(); ++i)
        paintCell(painter, i);
}

void StageStrip::paintCell(QPainter& painter, int index) const {
    const Palette& tones = Palette::of(*this);
    const QRectF box = cell(index);
    const bool isPresent = index == present_;
    fillAndOutline(painter, isPresent ? tones.paper : tones.panel,
                   QPen(isPresent ? tones.ink : tones.grid, isPresent ? 2.4 : 1.0));
    painter.drawRoundedRect(box, 4.0, 4.0);
    if (hasFocus() && index == chosen_) {
        outlineOnly(painter, QPen(tones.cursor, 1.0, Qt::DotLine));
        painter.drawRect(box.adjusted(3.5, 3.5, -3.5, -3.5));
    }
    const QFont plain = painter.font();
    painter.setFont(sized(plain, TypeSize::small));
    const double line = painter.fontMetrics().height();
    const double words = std::min(2.0 * line, box.height() - 18.0);
    const double pictured = std::min(0.5 * box.width(), box.height() - words - 14.0);
    if (pictured >= 8.0)
        paintPistons(painter,
                     QRectF(box.left() + 6.0, box.top() + 6.0, box.width() - 12.0, pictured),
                     stage(index).theta);
    painter.setPen(isPresent ? tones.ink : tones.quiet);
    painter.drawText(QRectF(box.left() + 1.0, box.bottom() - words - 3.0, box.width() - 2.0, words),
                     Qt::AlignCenter | Qt::TextWordWrap, stage(index).title);
    painter.setFont(plain);
}

/// The chamber between the crowns, in the colour of its gas; a gap in the wall is an open port. Of
/// a one-sided engine the chamber between crown and head, with the inlet in the wall below and the
/// exhaust in that above, as in the section.
void StageStrip::paintPistons(QPainter& painter, const QRectF& box, double theta) const {
    const Palette& tones = Palette::of(*this);
    const auto& pair = engine_.pair();
    const bool isOneSided = pair.mechanism().isOneSided();
    const double half = 0.5 * pair.mechanism().clearance;
    double reach = 0.0;
    for (const End end : pair.pistons())
        reach = std::max(reach, half + 1.3 * pair.curve(end).stroke());
    const double head = half + headShare * reach; // to its back
    const double perMetre = box.width() / (reach + (isOneSided ? head : reach));
    const double middle = box.left() + reach * perMetre;
    const auto place = [&](End end) {
        if (pair.uncovers(end) != end)
            return middle + half * perMetre;
        const double out =
            half + pair.curve(end).stroke() - pair.lift(end, theta).y + pair.shift(end);
        return middle + (end == End::inlet ? -out : out) * perMetre;
    };
    const double left = place(End::inlet), right = place(End::exhaust);
    const auto gas = engine_.gasAt(theta);
    fillOnly(painter, gas ? heatTone(tones, gas->temperature) : tones.grid);
    painter.drawRect(QRectF(QPointF(left, box.top()), QPointF(right, box.bottom())));
    painter.setBrush(tones.metal);
    painter.drawRect(QRectF(box.topLeft(), QPointF(left, box.bottom())));
    const QRectF other(QPointF(right, box.top()), box.bottomRight());
    painter.setBrush(isOneSided ? tones.metalPale : tones.metal);
    painter.drawRect(other);
    if (isOneSided)
        painter.fillRect(other, QBrush(tones.quiet, Qt::BDiagPattern));
    painter.setPen(QPen(tones.ink, 1.2));
    for (const double y : {box.top(), box.bottom()})
        painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
    for (const End end : bothEnds) {
        const bool hasPiston = pair.uncovers(end) == end;
        painter.setPen(QPen(hasPiston ? tones.side(end) : tones.ink, 2.4));
        painter.drawLine(QPointF(place(end), box.top()), QPointF(place(end), box.bottom()));
        if (engine_.timing().area(end, theta) <= 0.0)
            continue;
        const double crown = hasPiston ? place(end) : left;
        const double inward = crown < middle ? 7.0 : -7.0;
        painter.setPen(QPen(tones.side(end), 3.6));
        if (!isOneSided || end == End::exhaust)
            painter.drawLine(QPointF(crown, box.top()), QPointF(crown + inward, box.top()));
        if (!isOneSided || end == End::inlet)
            painter.drawLine(QPointF(crown, box.bottom()), QPointF(crown + inward, box.bottom()));
    }
}

void StageStrip::mousePressEvent(QMouseEvent* event) {
    for (int i = 0; i < stages(); ++i) {
        if (cell(i).contains(event->position())) {
            chosen_ = i;
            Q_EMIT stageChosen(i);
            update();
        }
    }
}

void StageStrip::keyPressEvent(QKeyEvent* event) {
    const int step = event->key() == Qt::Key_Right ? 1 : event->key() == Qt::Key_Left ? -1 : 0;
    if (step != 0 && stages() > 0) {
        chosen_ = ((chosen_ < 0 ? present_ : chosen_) + step + stages()) % stages();
        announce(chosen_);
        update();
    } else if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && chosen_ >= 0) {
        Q_EMIT stageChosen(chosen_);
    } else if (event->key() == Qt::Key_Space) {
        cursor_.togglePlaying();
    } else {
        QWidget::keyPressEvent(event);
    }
}

void StageStrip::focusInEvent(QFocusEvent* event) {
    chosen_ = present_;
    QWidget::focusInEvent(event);
    update();
}

void StageStrip::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

QString StageStrip::helpAt(const QPoint& at) const {
    for (int i = 0; i < stages(); ++i) {
        if (cell(i).contains(at))
            return tr("%1. Click to turn the shaft there.").arg(stage(i).title);
    }
    return {};
}

} // namespace lobewright::ui
