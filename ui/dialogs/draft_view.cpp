#include "ui/dialogs/draft_view.h"

#include "core/units.h"
#include "ui/base/core_text.h"
#include "ui/base/layouts.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/dialogs/candidate_table.h"
#include "ui/dialogs/draft_steps.h"

#include <QLabel>
#include <QProgressBar>

#include <algorithm>

namespace lobewright::ui {

namespace {

constexpr int settlingTime = 400; // [ms]

QLabel* wrapped(const char* name, QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setObjectName(QLatin1String(name));
    label->setWordWrap(true);
    return label;
}

} // namespace

DraftView::DraftView(QWidget* parent)
    : QWidget(parent), message_(wrapped("message", this)), remarks_(wrapped("remarks", this)),
      progress_(new QProgressBar(this)), table_(new CandidateTable(this)),
      steps_(new DraftSteps(this)) {
    auto* column = columnOf(this, {0, 0, 0, 0}, -1, {message_});
    progress_->setTextVisible(false);
    progress_->setMaximumHeight(4);
    QSizePolicy keepsPlace = progress_->sizePolicy();
    keepsPlace.setRetainSizeWhenHidden(true);
    progress_->setSizePolicy(keepsPlace);
    progress_->hide();
    column->addWidget(progress_);
    column->addWidget(table_, 1);
    remarks_->setTextFormat(Qt::RichText);
    column->addWidget(remarks_);
    column->addWidget(steps_, 1);
    column->addStretch(0);
    connect(remarks_, &QLabel::linkActivated, this, [this](const QString&) {
        if (const auto* made = selected(); made && made->nearestPower)
            Q_EMIT nearestPowerWanted(*made->nearestPower);
    });
    connect(steps_, &DraftSteps::ownNumber, this, &DraftView::take);
    connect(table_, &CandidateTable::chosenChanged, this, &DraftView::select);
    connect(&work_, &BackgroundWork::progressed, this,
            [this](double fraction) { progress_->setValue(static_cast<int>(100.0 * fraction)); });
    connect(&work_, &BackgroundWork::busyChanged, this, [this](bool isBusy) {
        progress_->setValue(0);
        progress_->setVisible(isBusy);
    });
    show({});
}

void DraftView::follow(const std::optional<draft::Brief>& brief, const QString& hint) {
    if (brief && brief == brief_)
        return;
    brief_ = brief;
    own_.clear();
    if (brief) {
        start();
        return;
    }
    work_.stop();
    show({});
    message_->setText(hint);
}

void DraftView::start() {
    message_->setText(tr("Drafting…"));
    work_.want(
        [this, brief = *brief_, own = own_](Monitor& monitor) -> BackgroundWork::Delivery {
            Answer answer;
            std::vector<draft::Options> candidates = draft::candidates(brief);
            for (size_t i = 0; i < candidates.size(); ++i) {
                const auto parts = static_cast<double>(candidates.size());
                PartOfWork share(monitor, static_cast<double>(i) / parts,
                                 static_cast<double>(i + 1) / parts);
                candidates[i].own = own;
                auto made = draft::draft(brief, candidates[i], share);
                if (made) {
                    answer.drafts.push_back(std::move(made).value());
                } else {
                    answer.problems.push_back(made.problems().front());
                }
            }
            return [this, answer = std::move(answer)]() mutable { show(std::move(answer)); };
        },
        settlingTime);
}

void DraftView::show(Answer answer) {
    steps_->show(nullptr); // looks at the drafts that go
    drafts_ = std::move(answer.drafts);
    QStringList words;
    for (const Problem& problem : answer.problems)
        words << coreText(problem.message);
    words.removeDuplicates();
    message_->setText(
        !words.isEmpty()
            ? tr("Not every candidate can be made: %1").arg(words.join(QStringLiteral("; ")))
        : drafts_.size() > 1 ? tr("Choose a candidate: %1. Every number below can be replaced by "
                                  "your own.")
                                   .arg(whatIsOpen())
                             : tr("Every number below can be replaced by your own."));
    table_->show(drafts_);
    for (QWidget* part : {static_cast<QWidget*>(table_), static_cast<QWidget*>(steps_),
                          static_cast<QWidget*>(remarks_)})
        part->setVisible(!drafts_.empty());
    // The one that was chosen before, else one of as many lobes.
    int wanted = drafts_.empty() ? -1 : 0;
    bool isOfLobes = false;
    for (size_t i = 0; i < drafts_.size(); ++i) {
        if (drafts_[i].design.tracks.inlet.lobes != wantedLobes_)
            continue;
        const bool isChosen = drafts_[i].charging == wantedCharging_;
        if (isChosen || !isOfLobes)
            wanted = static_cast<int>(i);
        if (isChosen)
            break;
        isOfLobes = true;
    }
    select(wanted);
}

void DraftView::select(int candidate) {
    selected_ = candidate;
    if (const draft::Draft* made = selected()) {
        table_->choose(candidate);
        wantedLobes_ = made->design.tracks.inlet.lobes;
        wantedCharging_ = made->charging;
    }
    steps_->show(selected());
    remarks_->setText(remarks());
    Q_EMIT changed();
}

const draft::Draft* DraftView::selected() const {
    return selected_ >= 0 && selected_ < static_cast<int>(drafts_.size())
               ? &drafts_[static_cast<size_t>(selected_)]
               : nullptr;
}

/// What the figures given do not say, so that each of it stands here.
QString DraftView::whatIsOpen() const {
    const auto differs = [this](const auto& of) {
        return std::ranges::any_of(
            drafts_, [&](const auto& made) { return of(made) != of(drafts_.front()); });
    };
    const bool isLobes = differs([](const auto& made) { return made.design.tracks.inlet.lobes; });
    const bool isCharging = differs([](const auto& made) { return made.charging; });
    return isLobes && isCharging
               ? tr("nothing given says how many lobes the tracks have, nor whether a blower or "
                    "turbocharger supplies the air (drawn beside the cylinders); each is possible")
           : isCharging ? tr("nothing given says whether a blower or turbocharger supplies the air "
                             "(drawn beside the cylinders); both are possible")
                        : tr("nothing given says how many lobes the tracks have");
}

/// What of the figures given is reached, and why the others are not.
QString DraftView::remarks() const {
    const draft::Draft* made = selected();
    if (!made)
        return {};
    const QString warning = Palette::of(*this).warning.name();
    QStringList reached, lines;
    for (const draft::Comparison& row : made->comparisons) {
        const QString label = coreText(row.label);
        if (row.why.empty()) {
            reached << inSentence(label);
            continue;
        }
        lines << QStringLiteral("<span style=\"color:%1\">%2</span>")
                     .arg(warning,
                          tr("%1: %2 wanted, %3 reached: %4")
                              .arg(label,
                                   quantityText(row.wanted, QString::fromStdString(row.unit)),
                                   quantityText(row.reached, QString::fromStdString(row.unit)),
                                   coreText(row.why))
                              .toHtmlEscaped());
    }
    for (const draft::Exceeded& row : made->exceeded) {
        QStringList names;
        for (const TextId label : row.forcedBy)
            names << coreText(label);
        QString text = coreText(row.message);
        if (!names.isEmpty()) {
            text +=
                QLatin1Char(' ') + tr("It follows from: %1.").arg(names.join(QStringLiteral(", ")));
        }
        lines << QStringLiteral("<span style=\"color:%1\">%2</span>")
                     .arg(warning, text.toHtmlEscaped());
    }
    if (const auto* together = made->solution.check("all-fire-together"))
        lines << coreText(together->message).toHtmlEscaped();
    if (made->nearestPower) {
        const QString power =
            quantityText(*made->nearestPower / units::kilowatt, QStringLiteral("kW"));
        lines << tr("An engine within the limits on its size has %1.").arg(power) +
                     QStringLiteral(" <a href=\"nearest\">%1</a>")
                         .arg(tr("Draft that instead").toHtmlEscaped());
    }
    if (!reached.isEmpty())
        lines << tr("Reached: %1.").arg(reached.join(QStringLiteral(", "))).toHtmlEscaped();
    return lines.join(QStringLiteral("<br>"));
}

void DraftView::take(const std::string& rule, std::optional<double> number) {
    if (number) {
        own_[rule] = *number;
    } else {
        own_.erase(rule);
    }
    // Not at once: the table that asks is still at work on the drafts that go.
    if (brief_)
        start();
}

} // namespace lobewright::ui
