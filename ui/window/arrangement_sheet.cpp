#include "ui/window/arrangement_sheet.h"

#include "ui/base/controls.h"
#include "ui/base/drawing.h"
#include "ui/base/palette.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QPainterPath>
#include <QPixmap>
#include <QToolButton>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr QSize pictureSize(132, 78);
constexpr int perRow = 3;

bool isOneOf(const QString& key, std::initializer_list<const char*> keys) {
    return std::ranges::any_of(keys, [&](const char* one) { return key == QLatin1String(one); });
}

/// What kind of view it is, in a few strokes.
void paintGlyph(QPainter& painter, const Palette& tones, const QRectF& box, const QString& key) {
    const QRectF inner = box.adjusted(5.0, 5.0, -5.0, -5.0);
    painter.setBrush(Qt::NoBrush);
    if (isOneOf(key, {"section", "solid", "clock"})) {
        const double middle = inner.top() + 0.36 * inner.height();
        painter.setPen(QPen(tones.metal, 3.0));
        painter.drawLine(QPointF(inner.left(), inner.top() + 0.8 * inner.height()),
                         QPointF(inner.right(), inner.top() + 0.8 * inner.height()));
        for (const End end : bothEnds) {
            const double x = end == End::inlet ? inner.left() : inner.right();
            const double way = end == End::inlet ? 1.0 : -1.0;
            painter.setPen(QPen(tones.side(end), 2.0));
            painter.drawLine(QPointF(x, inner.top()), QPointF(x, inner.bottom()));
            painter.drawLine(QPointF(x + way * 0.12 * inner.width(), middle),
                             QPointF(x + way * 0.42 * inner.width(), middle));
        }
        return;
    }
    if (isOneOf(key, {"walk", "tasks", "limits", "figures", "claims", "ranges", "factors"})) {
        painter.setPen(QPen(tones.quiet, 1.4));
        for (double y = inner.top(); y <= inner.bottom(); y += 5.0)
            painter.drawLine(QPointF(inner.left(), y), QPointF(inner.right(), y));
        return;
    }
    if (key == QLatin1String("stages")) {
        painter.setPen(QPen(tones.quiet, 1.0));
        for (int i = 0; i < 6; ++i) {
            painter.drawRect(QRectF(box.left() + 3.0 + i * (box.width() - 6.0) / 6.0,
                                    box.center().y() - 2.0, (box.width() - 12.0) / 6.0, 4.0));
        }
        return;
    }
    QPainterPath curve;
    constexpr int steps = 24;
    for (int i = 0; i <= steps; ++i) {
        const double share = static_cast<double>(i) / steps;
        const QPointF point(inner.left() + share * inner.width(),
                            inner.center().y() - 0.45 * inner.height() * std::sin(6.3 * share));
        if (i == 0)
            curve.moveTo(point);
        else
            curve.lineTo(point);
    }
    painter.setPen(QPen(tones.inlet, 1.6));
    painter.drawPath(curve);
}

} // namespace

QPixmap arrangementPicture(const Arrangement& arrangement, const QWidget& widget) {
    const Palette& tones = Palette::of(widget);
    const double ratio = widget.devicePixelRatioF();
    QPixmap picture(pictureSize * ratio);
    picture.setDevicePixelRatio(ratio);
    picture.fill(tones.panel);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    QRectF room = QRectF(QPointF(0, 0), QSizeF(pictureSize)).adjusted(1.0, 1.0, -1.0, -1.0);
    const auto frame = [&](const QRectF& box) {
        fillAndOutline(painter, tones.paper, QPen(tones.quiet, 1.0));
        painter.drawRect(box);
    };
    if (arrangement.side != Arrangement::Side::none) {
        QRectF side = room;
        side.setWidth(0.22 * room.width());
        frame(side.adjusted(0, 0, -2.0, 0));
        paintGlyph(painter, tones, side.adjusted(0, 0, -2.0, 0), QStringLiteral("figures"));
        room.setLeft(side.right());
    }
    int columns = 0;
    for (const auto& column : arrangement.columns)
        columns += column.share;
    double x = room.left();
    for (const auto& column : arrangement.columns) {
        const double wide = room.width() * column.share / columns;
        int rows = 0;
        for (const auto& row : column.rows)
            rows += row.share;
        double y = room.top();
        for (const auto& row : column.rows) {
            const double high = room.height() * row.share / rows;
            const QRectF box(x, y, wide - 2.0, high - 2.0);
            frame(box);
            paintGlyph(painter, tones, box, row.view);
            y += high;
        }
        x += wide;
    }
    return picture;
}

ArrangementSheet::ArrangementSheet(const QString& present, QWidget* parent)
    : QFrame(parent, Qt::Popup) {
    setObjectName(QStringLiteral("arrangementSheet"));
    setAccessibleName(tr("Arrangements"));
    setFrameShape(QFrame::StyledPanel);
    setAttribute(Qt::WA_DeleteOnClose);
    auto* layout = new QGridLayout(this);
    layout->setSpacing(8);
    int number = 0;
    for (const Arrangement& arrangement : arrangements()) {
        auto* button = new QToolButton(this);
        button->setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
        button->setIcon(QIcon(arrangementPicture(arrangement, *this)));
        button->setIconSize(pictureSize);
        button->setText(arrangement.title);
        describe(*button, arrangement.title, arrangement.hint);
        button->setAccessibleDescription(arrangement.hint);
        button->setCheckable(true);
        button->setChecked(arrangement.key == present);
        button->setAutoRaise(true);
        button->setFocusPolicy(Qt::StrongFocus);
        button->setObjectName(arrangement.key);
        layout->addWidget(button, number / perRow, number % perRow);
        connect(button, &QToolButton::clicked, this, [this, key = arrangement.key] {
            close();
            Q_EMIT chosen(key);
        });
        buttons_.push_back(button);
        if (arrangement.key == present)
            button->setFocus(Qt::PopupFocusReason);
        ++number;
    }
}

void ArrangementSheet::popUp(const QWidget& place) {
    adjustSize();
    const QPoint corner = place.mapToGlobal(QPoint(0, 0));
    move(corner.x(), std::max(0, corner.y() - height()));
    show();
}

void ArrangementSheet::keyPressEvent(QKeyEvent* event) {
    const int all = static_cast<int>(buttons_.size());
    const auto focused = std::ranges::find_if(buttons_, &QWidget::hasFocus);
    const int now = focused == buttons_.end() ? 0 : static_cast<int>(focused - buttons_.begin());
    const int step = event->key() == Qt::Key_Right  ? 1
                     : event->key() == Qt::Key_Left ? -1
                     : event->key() == Qt::Key_Down ? perRow
                     : event->key() == Qt::Key_Up   ? -perRow
                                                    : 0;
    if (step != 0 && now + step >= 0 && now + step < all) {
        buttons_[static_cast<std::size_t>(now + step)]->setFocus(Qt::TabFocusReason);
    } else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        static_cast<QToolButton*>(buttons_[static_cast<std::size_t>(now)])->click();
    } else {
        QFrame::keyPressEvent(event);
    }
}

} // namespace lobewright::ui
