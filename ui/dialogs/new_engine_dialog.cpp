#include "ui/dialogs/new_engine_dialog.h"

#include "core/draft/draft.h"
#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/layouts.h"
#include "ui/dialogs/draft_picture.h"
#include "ui/dialogs/draft_view.h"
#include "ui/dialogs/duty_page.h"
#include "ui/dialogs/published_page.h"
#include "ui/document/samples.h"

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QStackedWidget>
#include <QTabBar>
#include <QVBoxLayout>

namespace lobewright::ui {

namespace {

constexpr int formWidth = 410;
constexpr int pictureSize = 260;

/// One cylinder on tracks of one lobe, every number assumed.
std::optional<design::Design> smallestEngine() {
    const auto brief = draft::readDuty("power=2 kW, speed=3000 rpm, fuel=petrol, cylinders=1, "
                                       "lobes=1, supply=1.2 bar");
    SilentMonitor monitor;
    auto made = draft::draft(*brief, {.lobes = 1, .charging = {}, .own = {}}, monitor);
    if (!made)
        return std::nullopt;
    design::Design design = std::move(made).value().design;
    design.title.clear();
    return design;
}

QWidget* pictureOf(const design::Design& design, QWidget* parent) {
    auto* picture = new DraftPicture(design, false, 0.0, parent);
    picture->setFixedSize(pictureSize, pictureSize + 60);
    return picture;
}

QLabel* paragraph(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    return label;
}

} // namespace

NewEngineDialog::NewEngineDialog(QWidget* parent)
    : QDialog(parent), ways_(new QTabBar(this)), pages_(new QStackedWidget(this)),
      published_(new PublishedPage(this)), duty_(new DutyPage(this)), drafts_(new DraftView(this)) {
    setObjectName(QStringLiteral("newEngine"));
    setWindowTitle(tr("New engine"));
    auto* column = new QVBoxLayout(this);
    ways_->setObjectName(QStringLiteral("ways"));
    ways_->setAccessibleName(tr("What is known"));
    ways_->setExpanding(false);
    ways_->setDrawBase(true);
    for (const QString& way :
         {tr("&Published figures"), tr("A &duty"), tr("A p&icture"), tr("A &sample"), tr("&Blank")})
        ways_->addTab(way);
    column->addWidget(ways_);
    auto* line = new QHBoxLayout;
    line->setSpacing(12);
    column->addLayout(line, 1);
    pages_->addWidget(published_);
    pages_->addWidget(duty_);
    pages_->addWidget(buildSmallest(
        tr("Open begins with the smallest engine that is valid and a picture, or a page of a PDF, "
           "in which to measure: bore, stroke, pitch radius, ports, a lobe. What was measured goes "
           "to the inputs with its range; all others count as assumed.")));
    pages_->addWidget(buildSamples());
    pages_->addWidget(
        buildSmallest(tr("The smallest engine that is valid: one cylinder on tracks of one lobe. "
                         "Every number is yours to change.")));
    line->addWidget(pages_);
    line->addWidget(drafts_, 1);
    auto* buttons = footOf(*this, QDialogButtonBox::Cancel);
    open_ = addButton(*buttons, tr("&Open"), QDialogButtonBox::AcceptRole, "open");
    // Enter takes what is typed; it does not end the page.
    for (auto* button : {open_, buttons->button(QDialogButtonBox::Cancel)})
        button->setAutoDefault(false);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &NewEngineDialog::take);
    connect(ways_, &QTabBar::currentChanged, this, &NewEngineDialog::wayChanged);
    connect(published_, &PublishedPage::changed, this, &NewEngineDialog::follow);
    connect(duty_, &DutyPage::changed, this, &NewEngineDialog::follow);
    connect(drafts_, &DraftView::changed, this,
            [this] { open_->setEnabled(!drafts_->isVisibleTo(this) || drafts_->selected()); });
    connect(drafts_, &DraftView::nearestPowerWanted, this, [this](double power) {
        // Rounded down: it shall fit.
        const double kilowatts = std::floor(1000.0 * power / units::kilowatt) / 1000.0;
        duty_->setLine(QStringLiteral("power"), QStringLiteral("%1 kW").arg(kilowatts));
    });
    wayChanged();
    resize(1230, 730);
}

QWidget* NewEngineDialog::buildSamples() {
    auto* page = new QWidget(this);
    auto* line = new QHBoxLayout(page);
    line->setContentsMargins(0, 0, 0, 0);
    samples_ = new QListWidget(page);
    samples_->setObjectName(QStringLiteral("samples"));
    samples_->setFixedWidth(formWidth);
    for (const Sample& sample : samples())
        samples_->addItem(sampleText(sample.title));
    line->addWidget(samples_);
    sampleAbout_ = new QWidget(page);
    new QVBoxLayout(sampleAbout_);
    line->addWidget(sampleAbout_, 1);
    connect(samples_, &QListWidget::itemActivated, this, &NewEngineDialog::take);
    connect(samples_, &QListWidget::currentRowChanged, this, &NewEngineDialog::showSample);
    samples_->setCurrentRow(0);
    return page;
}

void NewEngineDialog::showSample(int index) {
    auto* column = static_cast<QVBoxLayout*>(sampleAbout_->layout());
    while (QLayoutItem* item = column->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    if (index < 0)
        return;
    const Sample& sample = samples()[static_cast<size_t>(index)];
    if (const auto design = loadSample(sample))
        column->addWidget(pictureOf(*design, sampleAbout_), 0, Qt::AlignLeft);
    column->addWidget(paragraph(sampleText(sample.notes), sampleAbout_), 1);
}

QWidget* NewEngineDialog::buildSmallest(const QString& text) {
    auto* page = new QWidget(this);
    auto* column = columnOf(page, {0, 0, 0, 0}, -1, {paragraph(text, page)});
    column->addStretch(1);
    return page;
}

void NewEngineDialog::begin() {
    chosen_.reset();
    name_.clear();
    sample_ = -1;
    isFromPublished_ = measuresPicture_ = false;
}

void NewEngineDialog::choose(Way way) {
    ways_->setCurrentIndex(static_cast<int>(way));
}

void NewEngineDialog::wayChanged() {
    const auto way = static_cast<Way>(ways_->currentIndex());
    pages_->setCurrentIndex(ways_->currentIndex());
    const bool isDrafted = way == Way::published || way == Way::duty;
    drafts_->setVisible(isDrafted);
    pages_->setSizePolicy(isDrafted ? QSizePolicy::Fixed : QSizePolicy::Preferred,
                          QSizePolicy::Preferred);
    pages_->setMinimumWidth(formWidth);
    pages_->setMaximumWidth(isDrafted ? formWidth : QWIDGETSIZE_MAX);
    const bool isSmallest = way == Way::blank || way == Way::picture;
    if (isSmallest && !blank_)
        blank_ = smallestEngine();
    auto* column = static_cast<QVBoxLayout*>(pages_->currentWidget()->layout());
    if (isSmallest && blank_ && !pages_->currentWidget()->findChild<DraftPicture*>())
        column->insertWidget(0, pictureOf(*blank_, pages_->currentWidget()), 0, Qt::AlignLeft);
    open_->setEnabled(way == Way::sample || (isSmallest && blank_));
    if (isDrafted)
        follow();
}

void NewEngineDialog::follow() {
    if (static_cast<Way>(ways_->currentIndex()) == Way::published) {
        drafts_->follow(published_->brief(),
                        tr("Candidates appear here as soon as one figure is given, with the rule "
                           "behind every number."));
    } else {
        drafts_->follow(duty_->brief(), tr("Candidates appear here as soon as a power or a torque "
                                           "is given, with the rule behind every number."));
    }
}

void NewEngineDialog::take() {
    const auto way = static_cast<Way>(ways_->currentIndex());
    switch (way) {
    case Way::sample:
        sample_ = samples_->currentRow();
        break;
    case Way::picture:
    case Way::blank:
        chosen_ = blank_;
        measuresPicture_ = way == Way::picture;
        if (!measuresPicture_)
            chosen_->knowledge.clear(); // every number is the person's own
        name_ = tr("New engine");
        break;
    case Way::published:
    case Way::duty:
        if (!drafts_->selected())
            return;
        chosen_ = drafts_->selected()->design;
        isFromPublished_ = way == Way::published;
        name_ = chosen_->title.empty() ? tr("Draft") : QString::fromStdString(chosen_->title);
        break;
    }
    accept();
}

const study::Claims* NewEngineDialog::publishedFigures() const {
    return isFromPublished_ ? &published_->claims() : nullptr;
}

} // namespace lobewright::ui
