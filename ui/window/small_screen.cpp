#include "ui/window/small_screen.h"

#include "ui/base/layouts.h"
#include "ui/base/plain_message.h"

#include <QApplication>
#include <QDialog>
#include <QFileDialog>
#include <QHelpEvent>
#include <QScreen>
#include <QStyleOptionToolButton>
#include <QStylePainter>
#include <QToolTip>

#include <algorithm>

namespace lobewright::ui {

namespace {
constexpr int besideText = 12; // [px] of a button without a frame
constexpr const char* scrolled = "isScrolled";

bool fits(const QSize& size, const QSize& room) {
    return size.width() <= room.width() && size.height() <= room.height();
}

/// Puts all that a dialog shows into an area that scrolls.
void scroll(QDialog& dialog) {
    if (!dialog.layout() || qobject_cast<QFileDialog*>(&dialog))
        return;
    dialog.setProperty(scrolled, true);
    auto* content = new QWidget;
    content->setLayout(dialog.layout()); // takes it, and what it holds, from the dialog
    columnOf(&dialog, {0, 0, 0, 0}, -1, {new CentreScroll(content, &dialog)});
    dialog.setMinimumSize(0, 0);
}
} // namespace

CentreScroll::CentreScroll(QWidget* content, QWidget* parent) : QScrollArea(parent) {
    setObjectName(QStringLiteral("centreScroll"));
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setWidgetResizable(true);
    setWidget(content);
}

QSize ElidedButton::minimumSizeHint() const {
    const QSize whole = QToolButton::minimumSizeHint();
    const int least = fontMetrics().averageCharWidth() * 12 + besideText;
    return {std::min(whole.width(), least), whole.height()};
}

QString ElidedButton::shownText() const {
    return width() >= sizeHint().width()
               ? text()
               : fontMetrics().elidedText(text(), Qt::ElideRight, width() - besideText);
}

void ElidedButton::paintEvent(QPaintEvent* /*event*/) {
    QStylePainter painter(this);
    QStyleOptionToolButton option;
    initStyleOption(&option);
    option.text = shownText();
    painter.drawComplexControl(QStyle::CC_ToolButton, option);
}

bool ElidedButton::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip && shownText() != text()) {
        const auto* help = static_cast<QHelpEvent*>(event);
        QToolTip::showText(help->globalPos(), plainToolTip(text() + QLatin1Char('\n') + toolTip()),
                           this);
        return true;
    }
    return QToolButton::event(event);
}

DialogFit::DialogFit(QObject* parent) : QObject(parent) {
    qApp->installEventFilter(this);
}

bool DialogFit::eventFilter(QObject* watched, QEvent* event) {
    auto* dialog = event->type() == QEvent::Show ? qobject_cast<QDialog*>(watched) : nullptr;
    if (dialog && dialog->screen()) {
        const QSize room = dialog->screen()->availableSize();
        if (!fits(dialog->minimumSizeHint(), room) && !dialog->property(scrolled).isValid())
            scroll(*dialog);
        if (!fits(dialog->size(), room))
            dialog->resize(dialog->size().boundedTo(room));
    }
    return false;
}

void showWhatFits(const std::vector<QWidget*>& parts, int used, int width, int spacing) {
    bool fits = true;
    for (QWidget* part : parts) {
        used += part->sizeHint().width() + spacing;
        fits = fits && used <= width;
        part->setVisible(fits);
    }
}

} // namespace lobewright::ui
