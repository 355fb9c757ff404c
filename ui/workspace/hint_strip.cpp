#include "ui/workspace/hint_strip.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QSettings>

namespace lobewright::ui {

namespace {
const auto seenKey = QStringLiteral("window/hintSeen");
} // namespace

HintStrip::HintStrip(QWidget* parent) : QFrame(parent) {
    setObjectName(QStringLiteral("hint"));
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::AlternateBase);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(8, 3, 6, 3);
    auto* text = new QLabel(
        tr("New here? Drag a diamond on the lift curve or a port edge in the section: every plot "
           "follows. F5 turns the shaft, Ctrl+1 to Ctrl+7 change the arrangement, F1 explains the "
           "pane you are in."),
        this);
    text->setWordWrap(true);
    auto* steps = new QPushButton(tr("First &steps"), this);
    steps->setToolTip(tr("Opens the help at the first minutes"));
    auto* dismiss = new QPushButton(tr("&Got it"), this);
    dismiss->setToolTip(tr("Puts this line away; Help > First hint brings it back"));
    row->addWidget(text, 1);
    row->addWidget(steps);
    row->addWidget(dismiss);
    connect(steps, &QPushButton::clicked, this, &HintStrip::firstStepsWanted);
    connect(dismiss, &QPushButton::clicked, this, &QWidget::hide);
    setAccessibleName(tr("First hint"));
    setAccessibleDescription(text->text());
    hide();
}

bool HintStrip::isNew() {
    return !QSettings().value(seenKey, false).toBool();
}

void HintStrip::open() {
    QSettings().setValue(seenKey, true);
    show();
}

void HintStrip::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        hide();
    else
        QFrame::keyPressEvent(event);
}

} // namespace lobewright::ui
