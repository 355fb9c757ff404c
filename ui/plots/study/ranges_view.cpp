#include "ui/plots/study/ranges_view.h"

#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/curve.h"
#include "ui/base/layouts.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/base/watching.h"
#include "ui/plots/base/plot_data.h"
#include "ui/plots/base/plot_export.h"
#include "ui/plots/study/pair_plot.h"
#include "ui/plots/study/tolerances_form.h"

#include <QComboBox>
#include <QLabel>
#include <QLocale>
#include <QMenu>
#include <QMouseEvent>
#include <QPainter>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace lobewright::ui {

namespace {
constexpr int rowHeight = 44; // two lines and room [px]
constexpr int edge = 8;
constexpr double rangeShare = 0.45; // of the width
constexpr double leastShare = 0.01; // of the spread, to be told
} // namespace

/// One row an unknown: its label on top, below it the range; on the right what is thought possible
/// as a faint bar and below it what would have to be true as a strong one, on the scale of its
/// range.
class RangesView::Rows : public QWidget, public DataSource {
  public:
    Rows(BandsModel& model, RangesView& view) : QWidget(&view), model_(model), view_(view) {
        setMouseTracking(true);
        setAccessibleName(RangesView::tr("What is not known"));
        helpByPlace(*this, [this](const QPoint& place) {
            const auto* unknown = at(place);
            return unknown ? helpOn(*unknown) : QString();
        });
    }

    /// What decides the result that is looked at stands first, so that it is seen without
    /// scrolling.
    void refill() {
        order_.resize(count());
        std::iota(order_.begin(), order_.end(), std::size_t{0});
        std::ranges::stable_sort(order_, std::ranges::greater(),
                                 [this](std::size_t unknown) { return share(unknown); });
        setMinimumHeight(static_cast<int>(count()) * rowHeight + edge);
        update();
    }

    DataSheet dataSheet() const override {
        DataSheet sheet{{RangesView::tr("input"), RangesView::tr("low"), RangesView::tr("high"),
                         RangesView::tr("unit")},
                        {}};
        for (std::size_t i = 0; i < count(); ++i) {
            const auto& unknown = model_.ensemble()->unknowns[i];
            const auto& marginal = unknown.marginal();
            const bool isChoice = marginal.kind == unknowns::Marginal::Kind::choice;
            sheet.rows.push_back({coreText(unknown.label),
                                  isChoice ? QString() : dataText(marginal.low),
                                  isChoice ? QString() : dataText(marginal.high),
                                  QString::fromStdString(unknown.unit)});
        }
        return sheet;
    }

  protected:
    void paintEvent(QPaintEvent*) override {
        const Palette& tones = Palette::of(*this);
        QPainter painter(this);
        painter.fillRect(rect(), tones.paper);
        for (std::size_t i = 0; i < std::min(order_.size(), count()); ++i)
            paintRow(painter, tones, edge / 2.0 + static_cast<double>(i) * rowHeight, order_[i]);
    }

    void mouseReleaseEvent(QMouseEvent* event) override {
        if (const auto* unknown = at(event->position().toPoint()))
            Q_EMIT view_.fieldWanted(QString::fromStdString(unknown->members.front().field.path));
    }

  private:
    std::size_t count() const { return model_.ensemble() ? model_.ensemble()->unknowns.size() : 0; }

    const unknowns::Unknown* at(const QPoint& place) const {
        const int row = (place.y() - edge / 2) / rowHeight;
        return row >= 0 && static_cast<std::size_t>(row) < std::min(order_.size(), count())
                   ? &model_.ensemble()->unknowns[order_[static_cast<std::size_t>(row)]]
                   : nullptr;
    }

    /// Of the spread of the result that is looked at; 0 while it is not known.
    double share(std::size_t unknown) const {
        const auto& decided = model_.decided();
        if (!decided)
            return 0.0;
        const auto& all = decided->decision.influences;
        const auto found = std::ranges::find(all, unknown, &unknowns::Influence::unknown);
        return found == all.end() ? 0.0 : found->total.value_or(found->first);
    }

    QString helpOn(const unknowns::Unknown& unknown) const {
        QStringList lines;
        for (const auto& member : unknown.members)
            lines << QString::fromStdString(member.field.path);
        lines << RangesView::tr(
            "Upper bar: what is thought possible. Lower bar: what would have to be true for the "
            "published figures. Click to see the input.");
        return lines.join(QLatin1Char('\n'));
    }

    const unknowns::Narrowed* narrowed(std::size_t unknown) const {
        if (!model_.requirement())
            return nullptr;
        const auto& all = model_.requirement()->unknowns;
        const auto found = std::ranges::find(all, unknown, &unknowns::Narrowed::unknown);
        return found == all.end() ? nullptr : &*found;
    }

    QString rangeText(const unknowns::Unknown& unknown) const {
        const auto& marginal = unknown.marginal();
        if (marginal.kind == unknowns::Marginal::Kind::choice) {
            QStringList words;
            for (std::size_t i = 0; i < unknown.members.front().options.size(); ++i)
                words << coreText(unknown.optionLabel(i));
            return words.join(RangesView::tr(" or "));
        }
        const Unit unit = unitFor(unknown.unit);
        return QStringLiteral("%1 %2").arg(
            endsText(unit.shown(marginal.low), unit.shown(marginal.high)), unit.text);
    }

    void paintRow(QPainter& painter, const Palette& tones, double top, std::size_t row) {
        const auto& unknown = model_.ensemble()->unknowns[row];
        const double split = edge + rangeShare * (width() - 2 * edge);
        QRectF label(edge, top, width() - 2 * edge, 0.45 * rowHeight);
        if (const double part = share(row); part >= leastShare) {
            const QString text =
                RangesView::tr("decides %1 %").arg(shortText(std::round(100.0 * part)));
            painter.setPen(tones.quiet);
            painter.drawText(label, Qt::AlignRight | Qt::AlignVCenter, text);
            label.adjust(0.0, 0.0, -painter.fontMetrics().horizontalAdvance(text) - edge, 0.0);
        }
        painter.setPen(tones.ink);
        painter.drawText(label, Qt::AlignLeft | Qt::AlignVCenter,
                         painter.fontMetrics().elidedText(coreText(unknown.label), Qt::ElideRight,
                                                          static_cast<int>(label.width())));
        painter.setPen(tones.quiet);
        const QRectF range(edge, label.bottom(), split - 2 * edge, 0.45 * rowHeight);
        painter.drawText(range, Qt::AlignLeft | Qt::AlignVCenter,
                         painter.fontMetrics().elidedText(rangeText(unknown), Qt::ElideRight,
                                                          static_cast<int>(range.width())));
        paintBars(painter, tones, row,
                  QRectF(split, label.bottom() + 1.0, width() - edge - split, 20.0));
    }

    void paintBars(QPainter& painter, const Palette& tones, std::size_t row, const QRectF& box) {
        const auto& marginal = model_.ensemble()->unknowns[row].marginal();
        const auto* after = narrowed(row);
        painter.setPen(Qt::NoPen);
        if (marginal.kind == unknowns::Marginal::Kind::choice) {
            const double part = box.width() / marginal.options;
            for (int i = 0; i < marginal.options; ++i) {
                const QRectF field(box.left() + i * part, box.top(), part - 3.0, 9.0);
                painter.fillRect(field, tones.tint(tones.ink, 0.18));
                if (after) {
                    painter.fillRect(
                        QRectF(field.left(), box.top() + 11.0,
                               field.width() * after->words[static_cast<std::size_t>(i)], 9.0),
                        tones.tint(tones.ink, 0.75));
                }
            }
            return;
        }
        const auto place = [&](double value) {
            const double share = (value - marginal.low) / (marginal.high - marginal.low);
            return box.left() + std::clamp(share, 0.0, 1.0) * box.width();
        };
        painter.fillRect(QRectF(box.left(), box.top(), box.width(), 9.0),
                         tones.tint(tones.ink, 0.18));
        if (after) {
            const double from = place(after->after.p05), to = place(after->after.p95);
            painter.fillRect(QRectF(from, box.top() + 11.0, std::max(2.0, to - from), 9.0),
                             tones.tint(tones.ink, 0.75));
        }
        painter.setPen(QPen(tones.ink, 2.0));
        const double now = place(marginal.mode);
        painter.drawLine(QPointF(now, box.top() - 2.0), QPointF(now, box.top() + 11.0));
    }

    BandsModel& model_;
    RangesView& view_;
    std::vector<std::size_t> order_; ///< of the unknowns, by rows
};

RangesView::RangesView(BandsModel& model, QWidget* parent)
    : QWidget(parent), model_(model), purpose_(new QComboBox(this)),
      tolerances_(new TolerancesForm(this)),
      search_(new QPushButton(tr("What would have to be true?"), this)),
      stop_(new QPushButton(tr("Stop"), this)), progress_(new QProgressBar(this)),
      heading_(new QLabel(this)), found_(new QLabel(this)), rows_(new Rows(model, *this)),
      pair_(new PairPlot(this)), scroll_(new QScrollArea(this)) {
    setAccessibleName(tr("What is not known"));
    purpose_->addItem(tr("What is not known"), static_cast<int>(unknowns::Purpose::unknown));
    purpose_->addItem(tr("Scatter of manufacture"), static_cast<int>(unknowns::Purpose::scatter));
    purpose_->addItem(tr("Free to choose"), static_cast<int>(unknowns::Purpose::free));
    describe(*purpose_, tr("Ranges"),
             tr("Which ranges are varied: those of inputs that are not certain; the "
                "usual tolerances of lift (±0.05 mm), port edges and clearance (±0.1 "
                "mm); or those of inputs that may still be chosen"));
    search_->setToolTip(tr("Looks among the possible engines for those that keep to the published "
                           "figures of the claims check"));
    stop_->setToolTip(tr("Stop computing; what is shown stays"));
    progress_->setRange(0, 1000);
    progress_->setTextVisible(false);
    progress_->setMaximumHeight(6);
    heading_->setWordWrap(true);
    found_->setWordWrap(true);
    found_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    makeScroll(*scroll_, rows_);
    tolerances_->hide();
    columnOf(this, {8, 4, 8, 4}, 4,
             {purpose_,
              tolerances_,
              heading_,
              {scroll_, 1},
              pair_,
              found_,
              rowOf(nullptr, {{search_, 1}, stop_}),
              progress_});
    connect(purpose_, &QComboBox::activated, this, [this] {
        const auto purpose = static_cast<unknowns::Purpose>(purpose_->currentData().toInt());
        tolerances_->setVisible(purpose == unknowns::Purpose::scatter);
        model_.setPurpose(purpose);
    });
    connect(tolerances_, &TolerancesForm::changed, &model_, &BandsModel::setTolerances);
    connect(search_, &QPushButton::clicked, &model_, &BandsModel::search);
    connect(stop_, &QPushButton::clicked, &model_, &BandsModel::stop);
    connect(&model_, &BandsModel::changed, this, &RangesView::refill);
    connect(&model_, &BandsModel::busyChanged, this, &RangesView::sayWork);
    connect(&Units::instance(), &Units::changed, this, &RangesView::refill);
    refill();
}

void RangesView::showSolution(const SolutionPointer& solution) {
    tolerances_->showDesign(solution->design);
    model_.showSolution(solution);
}

void RangesView::refill() {
    const auto& ensemble = model_.ensemble();
    heading_->setVisible(ensemble != nullptr);
    if (ensemble) {
        QString text =
            tr("%1 unknowns; the line is the design as it is. Click a row to see its "
               "input.")
                .arg(QLocale().toString(static_cast<qlonglong>(ensemble->unknowns.size())));
        if (!ensemble->followers.paths().empty()) {
            text += QLatin1Char(' ') +
                    tr("Values that came from a rule are recomputed with its inputs: stroke, "
                       "rollers and ports, for instance, with the bore.");
        }
        heading_->setText(text);
    }
    rows_->refill();
    const QString text = requirementText();
    found_->setText(text);
    found_->setVisible(!text.isEmpty());
    if (model_.requirement() && ensemble)
        pair_->show(*ensemble, *model_.requirement());
    else
        pair_->hide();
    sayWork();
}

void RangesView::sayWork() {
    const bool isWorking = model_.isBusy() || model_.isSearching();
    progress_->setValue(isWorking ? static_cast<int>(1000.0 * model_.progress()) : 0);
    stop_->setEnabled(isWorking);
    search_->setEnabled(model_.isWhole() && !isWorking && !model_.conditions().empty());
}

QString RangesView::requirementText() const {
    const auto& required = model_.requirement();
    if (!required) {
        return model_.hasNothingToVary()
                   ? tr("Nothing in this design has a range. Give an input one with Ctrl+I in its "
                        "field, or look at the scatter of manufacture above.")
               : model_.conditions().empty()
                   ? tr("Published figures entered in the claims check can be searched for here.")
                   : QString();
    }
    if (required->runs.empty()) {
        QString text = tr("None of %1 engines keeps to the published figures.")
                           .arg(QLocale().toString(
                               static_cast<qlonglong>(required->engines + required->tries)));
        if (std::isfinite(required->nearestMiss)) {
            text += QLatin1Char(' ') +
                    tr("The nearest misses by %1 %.").arg(shortText(100.0 * required->nearestMiss));
        }
        return text;
    }
    QStringList lines = {tr("%1 % of the possible engines keep to the published figures.")
                             .arg(shortText(100.0 * required->share))};
    for (const Message& sentence : unknowns::sentences(*required, model_.ensemble()->unknowns))
        lines << coreText(sentence);
    return lines.join(QLatin1Char('\n'));
}

QString RangesView::found() const {
    return found_->text();
}

void RangesView::addOptions(QMenu& menu) {
    addPictureActions(menu, *rows_, accessibleName());
    if (pair_->isVisible()) {
        QMenu* pair = menu.addMenu(pair_->accessibleName());
        addPictureActions(*pair, *pair_, pair_->accessibleName());
    }
}

} // namespace lobewright::ui
