#include "ui/plots/study/contact_range_box.h"

#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/layouts.h"

#include <QLabel>
#include <QToolButton>

#include <utility>

namespace lobewright::ui {

ContactRangeBox::ContactRangeBox(QWidget* parent)
    : QWidget(parent), find_(new QToolButton(this)), answer_(new QLabel(this)) {
    rowOf(this, {8, 0, 8, 0}, 8, {find_, {answer_, 1}});
    find_->setObjectName(QStringLiteral("findContact"));
    find_->setText(tr("Find contact speeds"));
    find_->setToolTip(tr("Where the rollers really begin to leave their tracks, with the gas "
                         "solved anew at each speed of this plot"));
    makeParagraph(*answer_, "contactSpeeds");
    answer_->setAccessibleName(tr("Speeds with contact"));
    connect(find_, &QToolButton::clicked, this, &ContactRangeBox::find);
    connect(&work_, &BackgroundWork::progressed, this, [this](double fraction, const QString&) {
        say(tr("searching … %1 %").arg(static_cast<int>(100.0 * fraction)), {});
    });
    connect(&work_, &BackgroundWork::busyChanged, this,
            [this](bool busy) { find_->setEnabled(!busy); });
}

void ContactRangeBox::setSubject(const SolutionPointer& solution,
                                 std::pair<double, double> speeds) {
    if (solution == solution_ && speeds == speeds_)
        return;
    solution_ = solution;
    speeds_ = speeds;
    work_.stop();
    say({}, {});
    if (std::exchange(found_, std::nullopt))
        Q_EMIT changed();
}

void ContactRangeBox::find() {
    if (!solution_)
        return;
    work_.wantAnswer(
        [design = solution_->design, speeds = speeds_](Monitor& monitor) {
            return study::contactRanges(design, speeds.first, speeds.second, monitor);
        },
        [this](Result<study::ContactRanges> answer) {
            if (!answer) {
                say(coreText(answer.problems().front().message), {});
                return;
            }
            found_ = std::move(answer).value();
            QStringList told;
            for (const Message& sentence : study::sentences(*found_))
                told << coreText(sentence);
            say(told.front(), told.join(QLatin1Char('\n')));
            Q_EMIT changed();
        });
}

QString ContactRangeBox::text() const {
    return answer_->text();
}

void ContactRangeBox::say(const QString& text, const QString& more) {
    answer_->setText(text);
    answer_->setToolTip(more);
    answer_->setAccessibleDescription(more);
}

} // namespace lobewright::ui
