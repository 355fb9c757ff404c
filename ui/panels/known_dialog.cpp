#include "ui/panels/known_dialog.h"

#include "core/design/design.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/units.h"
#include "ui/panels/number_edit.h"
#include "ui/panels/origin_words.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include <cmath>

namespace lobewright::ui {

namespace {

constexpr design::Origin origins[] = {design::Origin::given, design::Origin::measured,
                                      design::Origin::derived, design::Origin::assumed,
                                      design::Origin::chosen};

QString shownNumber(const design::Field& field, std::optional<double> value) {
    return value ? QLocale().toString(unitFor(field.unit).shown(*value), 'g', 7) : QString();
}

/// Nothing where the line is empty; NaN where it is no number.
std::optional<double> numberIn(const design::Field& field, const QLineEdit& line) {
    if (line.text().trimmed().isEmpty())
        return std::nullopt;
    const auto number = readNumber(line.text());
    return number ? unitFor(field.unit).metric(*number) : std::nan("");
}

} // namespace

KnownDialog::KnownDialog(const design::Design& design, const design::Field& field, QWidget* parent)
    : QDialog(parent), design_(design), field_(field),
      before_(design::knownOf(design, field.path)) {
    setObjectName(QStringLiteral("known"));
    setWindowTitle(tr("Origin and range: %1").arg(coreText(field.label)));
    auto* column = new QVBoxLayout(this);
    auto* form = new QFormLayout;
    column->addLayout(form);
    origin_ = new QComboBox(this);
    origin_->setObjectName(QStringLiteral("origin"));
    for (const design::Origin origin : origins)
        origin_->addItem(originWord(origin));
    origin_->setCurrentIndex(static_cast<int>(before_.origin));
    origin_->setToolTip(tr("Given: published. Measured: off a picture or a part. Derived: follows "
                           "from others by a rule. Assumed: guessed. Chosen: your own decision."));
    form->addRow(tr("&Origin"), origin_);
    if (field.kind == design::FieldKind::number || field.kind == design::FieldKind::integer)
        addRange(*form);
    if (field.kind == design::FieldKind::choice)
        addOptions(*form);
    group_ = new QLineEdit(QString::fromStdString(before_.group), this);
    group_->setToolTip(tr("Inputs of one group move together within their ranges"));
    form->addRow(tr("&Group"), group_);
    source_ = new QLineEdit(QString::fromStdString(before_.source), this);
    source_->setObjectName(QStringLiteral("source"));
    source_->setPlaceholderText(tr("Leaflet, page 2; side view; measured on the part"));
    form->addRow(tr("&Source"), source_);
    problem_ = new QLabel(this);
    problem_->setWordWrap(true);
    problem_->setObjectName(QStringLiteral("problem"));
    column->addWidget(problem_);
    auto* buttons = footOf(*this, QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    accept_ = buttons->button(QDialogButtonBox::Ok);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    for (QLineEdit* line : findChildren<QLineEdit*>())
        connect(line, &QLineEdit::textChanged, this, &KnownDialog::check);
    if (options_)
        connect(options_, &QListWidget::itemChanged, this, &KnownDialog::check);
    check();
    setMinimumWidth(420);
}

void KnownDialog::addRange(QFormLayout& form) {
    const QString unit = unitFor(field_.unit).text;
    const auto line = [&](const QString& label, std::optional<double> value, const char* name) {
        auto* edit = new QLineEdit(shownNumber(field_, value), this);
        edit->setObjectName(QLatin1String(name));
        form.addRow(unit.isEmpty() ? label : QStringLiteral("%1 [%2]").arg(label, unit), edit);
        return edit;
    };
    low_ = line(tr("&Lower limit"), before_.low, "low");
    high_ = line(tr("&Upper limit"), before_.high, "high");
    spread_ = new QComboBox(this);
    spread_->addItems({tr("all values alike"), tr("triangular, mode at the value"),
                       tr("normal, limits at 5 and 95 %")});
    spread_->setCurrentIndex(static_cast<int>(before_.spread));
    form.addRow(tr("&Distribution"), spread_);
}

void KnownDialog::addOptions(QFormLayout& form) {
    options_ = new QListWidget(this);
    options_->setObjectName(QStringLiteral("options"));
    for (size_t i = 0; i < field_.choices.size(); ++i) {
        auto* item = new QListWidgetItem(coreText(field_.choiceLabels[i]), options_);
        const bool isOption =
            std::ranges::find(before_.options, field_.choices[i]) != before_.options.end();
        item->setCheckState(isOption ? Qt::Checked : Qt::Unchecked);
    }
    options_->setMaximumHeight(
        options_->sizeHintForRow(0) * static_cast<int>(field_.choices.size()) + 8);
    form.addRow(tr("&Possible"), options_);
}

design::Known KnownDialog::entered() const {
    design::Known known = before_;
    known.origin = origins[origin_->currentIndex()];
    if (low_) {
        known.low = numberIn(field_, *low_);
        known.high = numberIn(field_, *high_);
        known.spread = known.low ? static_cast<design::Spread>(spread_->currentIndex())
                                 : design::Spread::uniform;
    }
    if (options_) {
        known.options.clear();
        for (int i = 0; i < options_->count(); ++i) {
            if (options_->item(i)->checkState() == Qt::Checked)
                known.options.push_back(field_.choices[static_cast<size_t>(i)]);
        }
    }
    known.group = group_->text().trimmed().toStdString();
    known.source = source_->text().trimmed().toStdString();
    if (known.origin != before_.origin)
        known.rule.clear();
    return known;
}

design::Knowledge KnownDialog::knowledge() const {
    design::Knowledge knowledge = design_.knowledge;
    const design::Known known = entered();
    if (known == design::Known{.origin = design::Origin::chosen}) {
        knowledge.erase(field_.path);
    } else {
        knowledge[field_.path] = known;
    }
    return knowledge;
}

void KnownDialog::check() {
    const design::Known known = entered();
    const bool isNumber =
        !(known.low && std::isnan(*known.low)) && !(known.high && std::isnan(*known.high));
    QString problem = isNumber ? QString() : tr("The limits must be numbers.");
    if (isNumber) {
        design::Design changed = design_;
        changed.knowledge = {{field_.path, known}};
        const Problems problems = design::brokenKnowledgeRules(changed);
        if (!problems.empty())
            problem = coreText(problems.front().message);
    }
    problem_->setText(problem);
    accept_->setEnabled(problem.isEmpty());
}

} // namespace lobewright::ui
