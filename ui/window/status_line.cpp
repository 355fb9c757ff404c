#include "ui/window/status_line.h"

#include "core/text/caution.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/plain_message.h"
#include "ui/panels/limits_list.h"
#include "ui/window/figures_bar.h"
#include "ui/window/foot_message.h"
#include "ui/window/session.h"
#include "ui/window/small_screen.h"
#include "ui/window/solving_state.h"

#include <QLabel>
#include <QMainWindow>
#include <QStatusBar>

namespace lobewright::ui {

namespace {
constexpr int longestBaselineName = 180; // [px]
} // namespace

StatusLine::StatusLine(Session& session, QWidget& results)
    : QObject(&session.window), figures_(new FiguresBar(&session.window)),
      recovery_(new QLabel(&session.window)), limits_(new ElidedButton(&session.window)) {
    recovery_->setObjectName(QStringLiteral("recoveryState"));
    recovery_->hide();
    limits_->setAutoRaise(true);
    limits_->setToolTip(tr("Show the list of limits"));
    connect(limits_, &QToolButton::clicked, this, &StatusLine::limitsWanted);
    QStatusBar& bar = *session.window.statusBar();
    bar.addPermanentWidget(figures_);
    bar.addPermanentWidget(baselineName(session));
    bar.addPermanentWidget(recovery_);
    bar.addPermanentWidget(limits_);
    new SolvingState(session.live, bar, results, *figures_);
    bar.addPermanentWidget(cautionButton(session));
    new FootMessage(bar);
}

QWidget* StatusLine::baselineName(Session& session) {
    auto* label = new QLabel(&session.window);
    label->setObjectName(QStringLiteral("baselineName"));
    label->setTextFormat(Qt::PlainText);
    label->hide();
    connect(&session.baseline, &Baseline::changed, label, [&session, label] {
        const QString& name = session.baseline.name();
        label->setVisible(session.baseline.solution() != nullptr);
        label->setText(session.window.fontMetrics().elidedText(
            tr("Baseline: %1").arg(name), Qt::ElideRight, longestBaselineName));
        label->setToolTip(plainToolTip(tr("“%1” is shown behind every plot and result").arg(name)));
    });
    return label;
}

/// The last thing on the right.
QWidget* StatusLine::cautionButton(Session& session) {
    auto* button = new QToolButton(&session.window);
    button->setObjectName(QStringLiteral("caution"));
    button->setAutoRaise(true);
    button->setText(tr("Estimates only"));
    describe(*button, tr("Estimates only: read the cautions"), plainToolTip(coreText(caution())));
    connect(button, &QToolButton::clicked, this, &StatusLine::cautionsWanted);
    return button;
}

void StatusLine::showLimits(const LimitsList& limits) {
    if (const QString summary = limits.summary(); summary != limits_->text())
        limits_->setText(summary);
}

} // namespace lobewright::ui
