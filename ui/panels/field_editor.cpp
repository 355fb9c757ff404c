#include "ui/panels/field_editor.h"

#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/layouts.h"
#include "ui/base/units.h"
#include "ui/panels/number_edit.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPlainTextEdit>
#include <QWheelEvent>

#include <algorithm>

namespace lobewright::ui {

namespace {

/// A choice that scrolling past does not change.
class CalmComboBox final : public QComboBox {
  public:
    using QComboBox::QComboBox;

  protected:
    void wheelEvent(QWheelEvent* event) override { event->ignore(); }
};

/// A text of several lines that is handed over on leaving.
class NotesEdit final : public QPlainTextEdit {
  public:
    using QPlainTextEdit::QPlainTextEdit;
    std::function<void()> left;

  protected:
    void focusOutEvent(QFocusEvent* event) override {
        QPlainTextEdit::focusOutEvent(event);
        left();
    }
};

std::optional<double> asNumber(const design::FieldValue& value) {
    if (const auto* number = std::get_if<double>(&value))
        return *number;
    if (const auto* whole = std::get_if<int>(&value))
        return *whole;
    return std::nullopt;
}

QString asText(const design::FieldValue& value) {
    const auto* text = std::get_if<std::string>(&value);
    return text ? QString::fromStdString(*text) : QString();
}

/// What people write after a number for the unit beside it; longest first.
QStringList unitsTyped(const Unit& unit) {
    if (unit.text == metricWord(QStringLiteral("1/min"))) {
        return {QStringLiteral("rev/min"), QStringLiteral("1/min"), QStringLiteral("U/min"),
                QStringLiteral("/min"), QStringLiteral("rpm")};
    }
    return {unit.text};
}

design::Range rangeShown(design::Range range, const Unit& unit) {
    if (unit.isMetric())
        return range;
    for (double* end : {&range.min, &range.max})
        *end = QString::number(unit.shown(*end), 'g', 5).toDouble();
    return range;
}

} // namespace

QString fieldHelp(const design::Field& field) {
    QString help = coreText(field.help);
    const bool ranged = field.range.min != 0.0 || field.range.max != 0.0;
    if ((field.kind == design::FieldKind::number || field.kind == design::FieldKind::integer) &&
        ranged) {
        const Unit unit = unitFor(field.unit);
        help += QStringLiteral("\n") +
                FieldEditor::tr("Range: %1 %2")
                    .arg(coreText(rangeShown(field.range, unit).describe()), unit.text)
                    .trimmed();
    }
    return help.trimmed();
}

FieldEditor::FieldEditor(const design::Field& field, QWidget* parent)
    : QWidget(parent), field_(field) {
    rowOf(this, {0, 0, 0, 0}, 4, {});
    switch (field_.kind) {
    case design::FieldKind::number:
    case design::FieldKind::integer:
        buildNumber();
        break;
    case design::FieldKind::choice:
        buildChoice();
        break;
    case design::FieldKind::boolean:
        buildFlag();
        break;
    case design::FieldKind::text:
        buildText();
        break;
    }
    const QString name =
        field_.groupLabel.empty()
            ? coreText(field_.label)
            : coreText(field_.groupLabel) + QStringLiteral(": ") + coreText(field_.label);
    for (QWidget* child : findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
        describe(*child, name, fieldHelp(field_));
        setFocusProxy(focusProxy() ? focusProxy() : child);
    }
    show(field);
}

design::FieldValue FieldEditor::typed(double number) const {
    // A fraction typed for a whole number is refused by the design, with its rule.
    return unitFor(field_.unit).metric(number);
}

void FieldEditor::buildNumber() {
    number_ = new NumberEdit(this);
    number_->setObjectName(QStringLiteral("number"));
    number_->setWhole(field_.kind == design::FieldKind::integer);
    number_->setMayBeEmpty(field_.nullable);
    int letters = fontMetrics().horizontalAdvance(QStringLiteral("00000.0"));
    if (field_.nullable)
        letters = std::max(letters, fontMetrics().horizontalAdvance(number_->placeholderText()));
    number_->setMinimumWidth(letters + 12);
    layout()->addWidget(number_);
    if (!field_.choices.empty()) {
        choice_ = new CalmComboBox(this);
        choice_->addItem(tr("given"));
        for (const TextId label : field_.choiceLabels)
            choice_->addItem(coreText(label));
        layout()->addWidget(choice_);
        connect(choice_, &QComboBox::activated, this, [this](int index) {
            if (index > 0) {
                Q_EMIT wanted(field_.choices[static_cast<size_t>(index - 1)]);
            } else if (!asNumber(field_.value)) {
                Q_EMIT wanted(0.0);
            }
        });
    }
    if (!field_.unit.empty()) {
        unit_ = new QLabel(this);
        layout()->addWidget(unit_);
    }
    nameUnit();
    connect(&Units::instance(), &Units::changed, this, [this] {
        nameUnit();
        showNumber();
    });
    connect(number_, &NumberEdit::entered, this, [this](std::optional<double> number) {
        Q_EMIT wanted(number ? typed(*number) : design::FieldValue(std::monostate{}));
    });
    connect(number_, &NumberEdit::stepped, this,
            [this](double number) { Q_EMIT stepped(typed(number)); });
    connect(number_, &NumberEdit::stepsDone, this, &FieldEditor::stepsDone);
    connect(number_, &NumberEdit::unreadable, this, &FieldEditor::unreadable);
    connect(number_, &NumberEdit::textEdited, this, &FieldEditor::touched);
    connect(number_, &NumberEdit::givenUp, this, &FieldEditor::touched);
}

void FieldEditor::nameUnit() {
    const Unit unit = unitFor(field_.unit);
    number_->setDigits(field_.kind == design::FieldKind::integer ? 0 : 5);
    number_->setUnits(unitsTyped(unit));
    for (QWidget* part : std::initializer_list<QWidget*>{number_, choice_, unit_}) {
        if (part)
            part->setToolTip(fieldHelp(field_));
    }
    if (!unit_)
        return;
    unit_->setText(unit.text);
    unit_->setMinimumWidth(std::max(unit_->sizeHint().width(),
                                    unit_->fontMetrics().horizontalAdvance(QStringLiteral("mm"))));
}

void FieldEditor::buildChoice() {
    choice_ = new CalmComboBox(this);
    choice_->setObjectName(QStringLiteral("choice"));
    choice_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    choice_->setMinimumContentsLength(6);
    for (size_t i = 0; i < field_.choices.size(); ++i) {
        choice_->addItem(i < field_.choiceLabels.size()
                             ? coreText(field_.choiceLabels[i])
                             : QString::fromStdString(field_.choices[i]));
    }
    layout()->addWidget(choice_);
    connect(choice_, &QComboBox::activated, this, [this](int index) {
        const std::string chosen = field_.choices[static_cast<size_t>(index)];
        show(design::Field(field_)); // back to what the design says, until it has taken the choice
        Q_EMIT wanted(chosen);
    });
}

void FieldEditor::buildFlag() {
    flag_ = new QCheckBox(tr("yes"), this);
    flag_->setObjectName(QStringLiteral("flag"));
    layout()->addWidget(flag_);
    connect(flag_, &QCheckBox::clicked, this, [this](bool checked) { Q_EMIT wanted(checked); });
}

void FieldEditor::buildText() {
    if (field_.path != "/notes") {
        line_ = new QLineEdit(this);
        line_->setObjectName(QStringLiteral("text"));
        layout()->addWidget(line_);
        connect(line_, &QLineEdit::textEdited, this, &FieldEditor::touched);
        connect(line_, &QLineEdit::editingFinished, this, [this] {
            line_->setModified(false);
            if (line_->text() != asText(field_.value))
                Q_EMIT wanted(line_->text().toStdString());
        });
        return;
    }
    auto* notes = new NotesEdit(this);
    text_ = notes;
    text_->setTabChangesFocus(true);
    text_->setMinimumHeight(fontMetrics().height() * 8);
    layout()->addWidget(text_);
    notes->left = [this] {
        text_->document()->setModified(false);
        if (text_->toPlainText() != asText(field_.value))
            Q_EMIT wanted(text_->toPlainText().toStdString());
    };
}

void FieldEditor::show(const design::Field& field) {
    field_ = field;
    if (number_) {
        showNumber();
    } else if (choice_) {
        const auto found = std::ranges::find(field_.choices, asText(field_.value).toStdString());
        choice_->setCurrentIndex(static_cast<int>(found - field_.choices.begin()));
    }
    if (flag_)
        flag_->setChecked(std::get<bool>(field_.value));
    if (line_ && line_->text() != asText(field_.value))
        line_->setText(asText(field_.value));
    if (text_ && text_->toPlainText() != asText(field_.value))
        text_->setPlainText(asText(field_.value));
}

void FieldEditor::setFollowsSpeed(bool follows) {
    if (!number_ || number_->isReadOnly() == follows)
        return;
    number_->setReadOnly(follows);
    if (choice_)
        choice_->setEnabled(!follows);
}

void FieldEditor::showNumber() {
    const auto number = asNumber(field_.value);
    number_->setNumber(number ? std::optional(unitFor(field_.unit).shown(*number)) : std::nullopt);
    if (!choice_)
        return;
    const QString word = asText(field_.value);
    number_->setEnabled(word.isEmpty());
    const auto found = std::ranges::find(field_.choices, word.toStdString());
    choice_->setCurrentIndex(word.isEmpty() ? 0
                                            : static_cast<int>(found - field_.choices.begin()) + 1);
}

} // namespace lobewright::ui
