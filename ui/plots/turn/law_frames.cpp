#include "ui/plots/turn/law_frames.h"

#include "ui/base/core_text.h"
#include "ui/base/drawing.h"
#include "ui/base/palette.h"
#include "ui/base/type_scale.h"
#include "ui/base/watching.h"

#include <QKeyEvent>
#include <QMouseEvent>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr int lawCount = static_cast<int>(std::size(motion::allLaws));
constexpr int points = 160;
constexpr double gap = 4.0; // [px]

motion::Law lawOf(int index) {
    return motion::allLaws[index];
}

/// Largest magnitude of a derivative over all laws: the scale of all frames.
double scaleOf(int derivative) {
    double most = 1.0;
    for (const motion::Law law : motion::allLaws) {
        const motion::CharacteristicFactors c = motion::characteristicFactors(law);
        const double values[] = {1.0, c.velocity, c.acceleration, c.jerkInside};
        most = std::max(most, values[derivative]);
    }
    return most;
}

double valueOf(const motion::Lift& lift, int derivative) {
    const double values[] = {lift.y, lift.y1, lift.y2, lift.y3};
    return values[derivative];
}

QPen penOf(const Palette& tones, int derivative) {
    switch (derivative) {
    case 0:
        return QPen(tones.ink, 2.0);
    case 1:
        return QPen(tones.ink, 1.2);
    case 2:
        return QPen(tones.quiet, 2.0);
    default:
        return QPen(tones.quiet, 1.2, Qt::DotLine);
    }
}

/// The font, smaller where the longest of these words is wider than the room [px].
QFont fitting(const QFont& font, const QStringList& words, double room) {
    double widest = 1.0;
    for (const QString& word : words)
        widest = std::max(widest, QFontMetricsF(font).horizontalAdvance(word));
    constexpr double rounding = 0.98; // of letters to whole pixels
    return widest <= room ? font : fitted(font, rounding * room / widest);
}

} // namespace

LawFrames::LawFrames(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Normalised curves of all motion laws"));
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    helpByPlace(*this, [this](const QPoint& at) { return helpAt(at); });
}

QSize LawFrames::minimumSizeHint() const {
    return {lawCount * 44, 5 * fontMetrics().height()};
}

void LawFrames::setCurves(int shown) {
    curves_ = shown;
    update();
}

void LawFrames::setPresent(int law) {
    present_ = law;
    update();
}

void LawFrames::setChosen(int law) {
    chosen_ = law;
    setAccessibleDescription(law < 0 ? QString() : coreText(motion::rowOf(lawOf(law)).label));
    update();
}

QRectF LawFrames::frameOf(int law) const {
    const double wide = (width() - gap) / static_cast<double>(lawCount);
    return {gap + law * wide, gap, wide - gap, height() - 2.0 * gap};
}

int LawFrames::frameAt(const QPointF& point) const {
    for (int law = 0; law < lawCount; ++law) {
        if (frameOf(law).contains(point))
            return law;
    }
    return -1;
}

void LawFrames::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), Palette::of(*this).paper);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(sized(font(), TypeSize::small));
    for (int law = 0; law < lawCount; ++law)
        paintFrame(painter, law);
}

void LawFrames::paintFrame(QPainter& painter, int law) const {
    const Palette& tones = Palette::of(*this);
    const QRectF frame = frameOf(law);
    const bool isPresent = law == present_;
    if (law == chosen_)
        painter.fillRect(frame, tones.panel);
    outlineOnly(painter, QPen(isPresent ? tones.ink : tones.grid, isPresent ? 1.8 : 1.0));
    painter.drawRect(frame);
    // Two lines hold every name down to narrow panes; a long word is written smaller.
    const double line = painter.fontMetrics().lineSpacing();
    QString name = coreText(motion::rowOf(lawOf(law)).label);
    name.replace(QLatin1Char(' '), QLatin1Char('\n'));
    QStringList words = name.split(QLatin1Char('\n'));
    painter.setPen(tones.ink);
    const QFont usual = painter.font();
    painter.setFont(fitting(usual, words, frame.width() - 6.0));
    for (int i = 0; i < words.size(); ++i) {
        const QRectF place(frame.left() + 3.0, frame.top() + 1.0 + i * line, frame.width() - 6.0,
                           line);
        painter.drawText(place, Qt::AlignHCenter | Qt::AlignVCenter,
                         painter.fontMetrics().elidedText(words[i], Qt::ElideRight,
                                                          static_cast<int>(place.width())));
    }
    painter.setFont(usual);
    const QRectF box = frame.adjusted(5.0, 2.0 * line + 5.0, -5.0, -5.0);
    if (box.height() < 12.0)
        return;
    painter.setPen(QPen(tones.grid, 1.0));
    painter.drawLine(QPointF(box.left(), box.center().y()), QPointF(box.right(), box.center().y()));
    for (int derivative = 3; derivative >= 0; --derivative) {
        if (curves_ & (1 << derivative))
            paintCurve(painter, law, derivative, box);
    }
}

void LawFrames::paintCurve(QPainter& painter, int law, int derivative, const QRectF& box) const {
    const Palette& tones = Palette::of(*this);
    const double scale = scaleOf(derivative);
    const auto place = [&](double x, double value) {
        return QPointF(box.left() + x * box.width(),
                       box.center().y() - 0.5 * box.height() * value / scale);
    };
    // From rest and back to rest: where a curve does not begin at zero, it jumps there.
    QPolygonF curve;
    curve << place(0.0, 0.0);
    for (int i = 0; i <= points; ++i) {
        const double x = static_cast<double>(i) / points;
        curve << place(x, valueOf(motion::unitLift(lawOf(law), x), derivative));
    }
    curve << place(1.0, derivative == 0 ? 1.0 : 0.0);
    painter.setPen(penOf(tones, derivative));
    painter.drawPolyline(curve);
    if (derivative != 2)
        return;
    const double ends[] = {valueOf(motion::unitLift(lawOf(law), 0.0), 2),
                           valueOf(motion::unitLift(lawOf(law), 1.0), 2)};
    painter.setPen(QPen(tones.warning, 2.2));
    for (int i = 0; i < 2; ++i) {
        if (std::abs(ends[i]) > 1e-9)
            painter.drawLine(place(i, 0.0), place(i, ends[i]));
    }
}

void LawFrames::mousePressEvent(QMouseEvent* event) {
    const int law = frameAt(event->position());
    if (event->button() == Qt::LeftButton && law >= 0)
        Q_EMIT lawChosen(law);
}

void LawFrames::mouseDoubleClickEvent(QMouseEvent* event) {
    const int law = frameAt(event->position());
    if (event->button() == Qt::LeftButton && law >= 0)
        Q_EMIT lawWanted(law);
}

void LawFrames::keyPressEvent(QKeyEvent* event) {
    const int from = chosen_ < 0 ? std::max(present_, 0) : chosen_;
    switch (event->key()) {
    case Qt::Key_Left:
        Q_EMIT lawChosen(std::max(from - 1, 0));
        break;
    case Qt::Key_Right:
        Q_EMIT lawChosen(std::min(from + 1, lawCount - 1));
        break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (chosen_ >= 0)
            Q_EMIT lawWanted(chosen_);
        break;
    default:
        QWidget::keyPressEvent(event);
    }
}

QString LawFrames::helpAt(const QPoint& at) const {
    const int law = frameAt(at);
    if (law < 0)
        return {};
    const motion::CharacteristicFactors c = motion::characteristicFactors(lawOf(law));
    return tr("%1: C_v %2, C_a %3, C_j %4. Thick: lift; thin: velocity; dashed: "
              "acceleration; dotted: jerk, each to one scale in all frames. A bar: the "
              "acceleration jumps beside a dwell. Double click: use this law.")
        .arg(coreText(motion::rowOf(lawOf(law)).label))
        .arg(localNumbers(QString::number(c.velocity, 'f', 3)),
             localNumbers(QString::number(c.acceleration, 'f', 3)),
             std::isinf(c.jerk) ? QString(QChar(0x221E))
                                : localNumbers(QString::number(c.jerk, 'f', 2)));
}

} // namespace lobewright::ui
