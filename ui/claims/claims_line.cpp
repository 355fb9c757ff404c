#include "ui/claims/claims_line.h"

#include "core/claims/claims_file.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/layouts.h"
#include "ui/base/palette.h"
#include "ui/panels/number_edit.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>

namespace lobewright::ui {

namespace {

/// Characters that a published figure, a count and a word need.
constexpr int amountWidth = 15, countWidth = 12; // "not given" in either language
/// Of every label, in average characters: all fields stand in one column.
constexpr int labelWidth = 24;

void colour(QLabel& label, const QColor& tone) {
    QPalette palette = label.palette();
    palette.setColor(QPalette::WindowText, tone);
    label.setPalette(palette);
}

/// The rule of the claims file that these claims break; empty: none.
QString ruleBroken(const study::Claims& claims) {
    const auto read = study::readClaims(study::writeClaims(claims));
    return read ? QString() : coreText(read.problems().front().message);
}

/// As wide as what is typed in it; the rest of the line stays free.
void setCharacters(QWidget& edit, int count) {
    edit.setFixedWidth(count * edit.fontMetrics().horizontalAdvance(QLatin1Char('0')) + 12);
}

QComboBox* wordBox(const QStringList& words, QWidget* parent) {
    auto* box = new QComboBox(parent);
    box->addItems(words);
    box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    box->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    return box;
}

} // namespace

ClaimsLine::ClaimsLine(ClaimEntry entry, study::Claims& claims, QFormLayout& form, QWidget* parent)
    : QWidget(parent), entry_(std::move(entry)), claims_(claims), form_(form) {
    const QString label = coreText(entry_.label);
    editor_ = makeEditor();
    describe(*editor_, label, help());
    auto* column = columnOf(this, {0, 0, 0, 0}, 0, {editor_});
    const auto addLine = [&](const char* name) {
        auto* text = new QLabel(this);
        text->setObjectName(QLatin1String(name));
        text->setTextFormat(Qt::PlainText); // what was typed is quoted
        text->setWordWrap(true);
        text->hide();
        column->addWidget(text);
        return text;
    };
    rule_ = addLine("problem");
    hint_ = addLine("wanted");
    auto* name = new QLabel(label, parent);
    name->setBuddy(editor_);
    name->setWordWrap(true);
    name->setFixedWidth(labelWidth * name->fontMetrics().averageCharWidth());
    form.addRow(name, this);
}

QWidget* ClaimsLine::makeEditor() {
    switch (entry_.kind) {
    case ClaimEntry::Kind::text:
        return makeText();
    case ClaimEntry::Kind::amount:
        return makeAmount();
    case ClaimEntry::Kind::count:
        return makeCount();
    case ClaimEntry::Kind::choice:
        return makeChoice();
    case ClaimEntry::Kind::flag:
        break;
    }
    return makeFlag();
}

QString ClaimsLine::help() const {
    const QString text =
        entry_.help.empty()
            ? tr("%1, as it was published; empty: not published").arg(coreText(entry_.label))
            : coreText(entry_.help);
    return entry_.kind == ClaimEntry::Kind::amount
               ? text + QLatin1Char('\n') + coreText(study::describe(entry_.dimension))
               : text;
}

QWidget* ClaimsLine::makeText() {
    auto* edit = new QLineEdit(this);
    fill_ = [this, edit] {
        edit->setText(QString::fromStdString(entry_.text(claims_)));
        edit->setCursorPosition(0);
    };
    connect(edit, &QLineEdit::editingFinished, this, [this, edit] {
        change([&](study::Claims& claims) { entry_.text(claims) = edit->text().toStdString(); });
    });
    return edit;
}

QWidget* ClaimsLine::makeAmount() {
    auto* edit = new QLineEdit(this);
    setCharacters(*edit, amountWidth);
    const std::string_view unit = study::shownUnit(entry_.dimension).symbol;
    if (entry_.dimension != study::Dimension::fraction) { // "%" would be misread where 1.1 is meant
        edit->setPlaceholderText(
            QString::fromUtf8(unit.data(), static_cast<qsizetype>(unit.size())));
    }
    fill_ = [this, edit] {
        const auto& value = entry_.amount(claims_);
        edit->setText(value ? QString::fromStdString(study::text(*value)) : QString());
    };
    connect(edit, &QLineEdit::editingFinished, this, [this, edit] {
        std::optional<study::Amount> amount;
        if (const QString typed = edit->text().trimmed(); !typed.isEmpty()) {
            const auto read = study::parseAmount(typed.toStdString(), entry_.dimension);
            if (!accept(read ? QString() : coreText(read.problems().front().message)))
                return;
            amount = *read;
        }
        change([&](study::Claims& claims) { entry_.amount(claims) = amount; });
    });
    return edit;
}

QWidget* ClaimsLine::makeCount() {
    auto* edit = new NumberEdit(this);
    edit->setMayBeEmpty(true);
    edit->setWhole(entry_.isWhole);
    setCharacters(*edit, countWidth);
    fill_ = [this, edit] { edit->setNumber(entry_.count(claims_)); };
    const auto take = [this](std::optional<double> number) {
        change([&](study::Claims& claims) { entry_.count(claims) = number; });
    };
    connect(edit, &NumberEdit::unreadable, this,
            [this](const QString& text) { accept(tr("“%1” is not a number").arg(text)); });
    connect(edit, &NumberEdit::entered, this, take);
    connect(edit, &NumberEdit::stepped, this, [take](double number) { take(number); });
    return edit;
}

QWidget* ClaimsLine::makeChoice() {
    QStringList words{tr("not given")};
    for (const study::ClaimWord& word : entry_.words)
        words << coreText(word.label);
    auto* box = wordBox(words, this);
    fill_ = [this, box] {
        const auto chosen = entry_.chosen(claims_);
        box->setCurrentIndex(chosen ? static_cast<int>(*chosen) + 1 : 0);
    };
    connect(box, &QComboBox::activated, this, [this](int index) {
        change([&](study::Claims& claims) {
            entry_.choose(claims, index > 0 ? std::optional(static_cast<std::size_t>(index - 1))
                                            : std::nullopt);
        });
    });
    return box;
}

QWidget* ClaimsLine::makeFlag() {
    auto* box = wordBox({tr("not given"), tr("no"), tr("yes")}, this);
    fill_ = [this, box] {
        const auto& value = entry_.flag(claims_);
        box->setCurrentIndex(!value ? 0 : *value ? 2 : 1);
    };
    connect(box, &QComboBox::activated, this, [this](int index) {
        change([&](study::Claims& claims) {
            entry_.flag(claims) = index == 0 ? std::nullopt : std::optional(index == 2);
        });
    });
    return box;
}

bool ClaimsLine::isFilled() const {
    switch (entry_.kind) {
    case ClaimEntry::Kind::text:
        return !entry_.text(claims_).empty();
    case ClaimEntry::Kind::amount:
        return entry_.amount(claims_).has_value();
    case ClaimEntry::Kind::count:
        return entry_.count(claims_).has_value();
    case ClaimEntry::Kind::choice:
        return entry_.chosen(claims_).has_value();
    case ClaimEntry::Kind::flag:
        break;
    }
    return entry_.flag(claims_).has_value();
}

bool ClaimsLine::isMarked() const {
    return !rule_->isHidden();
}

void ClaimsLine::refresh(bool all) {
    if (!all && isMarked())
        return;
    fill_();
    accept({});
}

void ClaimsLine::setShown(bool isShown) {
    form_.setRowVisible(this, isShown);
}

void ClaimsLine::setHint(const QString& hint) {
    colour(*hint_, Palette::of(*hint_).quiet);
    hint_->setText(hint);
    hint_->setVisible(!hint.isEmpty());
}

/// Shows the rule that was broken, if any; whether the entry can be taken.
bool ClaimsLine::accept(const QString& broken) {
    colour(*rule_, Palette::of(*rule_).warning);
    rule_->setText(broken);
    rule_->setVisible(!broken.isEmpty());
    return broken.isEmpty();
}

void ClaimsLine::change(const std::function<void(study::Claims&)>& edit) {
    study::Claims claims = claims_;
    edit(claims);
    if (accept(ruleBroken(claims)))
        Q_EMIT edited(claims, coreText(entry_.label));
}

} // namespace lobewright::ui
