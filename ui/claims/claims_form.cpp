#include "ui/claims/claims_form.h"

#include "core/claims/claims_file.h"
#include "core/claims/claims_keys.h"
#include "core/draft/brief.h"
#include "ui/base/core_text.h"
#include "ui/base/palette.h"
#include "ui/panels/number_edit.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <fmt/format.h>

namespace lobewright::ui {

namespace {

QString fromView(TextId text) {
    return coreText(text);
}

QString helpOf(TextId label, TextId help) {
    return help.empty() ? ClaimsForm::tr("%1, as it was published; empty: not published")
                              .arg(fromView(label))
                        : fromView(help);
}

/// An editor with room for the rule that an entry broke.
struct MarkedEdit {
    QWidget* both;
    QLabel* rule;
};

MarkedEdit marked(QWidget* editor, QWidget* parent) {
    auto* both = new QWidget(parent);
    auto* column = new QVBoxLayout(both);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(1);
    column->addWidget(editor);
    auto* rule = new QLabel(both);
    rule->setObjectName(QStringLiteral("problem"));
    rule->setTextFormat(Qt::PlainText); // what was typed is quoted
    rule->setWordWrap(true);
    rule->hide();
    column->addWidget(rule);
    return {both, rule};
}

void sayRule(QLabel& rule, const QString& text) {
    QPalette palette = rule.palette();
    palette.setColor(QPalette::WindowText, Palette::of(rule).warning);
    rule.setPalette(palette);
    rule.setText(text);
    rule.setVisible(!text.isEmpty());
}

bool isMarked(const QLabel& rule) {
    return !rule.isHidden();
}

/// Shows the rule that was broken, if any; whether the entry can be taken.
bool accept(QLabel& rule, const QString& broken) {
    sayRule(rule, broken);
    return broken.isEmpty();
}

/// The rule of the claims file that these claims break; empty: none.
QString ruleBroken(const study::Claims& claims) {
    const auto read = study::readClaims(study::writeClaims(claims));
    return read ? QString() : coreText(read.problems().front().message);
}

} // namespace

template <class Key, class Access>
void ClaimsForm::addText(QFormLayout& form, std::vector<Line>& lines, const Key& key,
                         Access access) {
    auto* edit = new QLineEdit(this);
    edit->setToolTip(helpOf(key.label, key.help));
    edit->setAccessibleName(fromView(key.label));
    const MarkedEdit field = marked(edit, this);
    form.addRow(fromView(key.label), field.both);
    const auto member = key.text;
    lines.push_back({[=, this](bool all) {
        if (!all && isMarked(*field.rule))
            return;
        edit->setText(QString::fromStdString(access(claims_).*member));
        edit->setCursorPosition(0);
        sayRule(*field.rule, {});
    }});
    connect(edit, &QLineEdit::editingFinished, this, [=, this, label = fromView(key.label)] {
        study::Claims claims = claims_;
        access(claims).*member = edit->text().toStdString();
        if (accept(*field.rule, ruleBroken(claims)))
            change(std::move(claims), label);
    });
}

template <class Key, class Access>
void ClaimsForm::addAmount(QFormLayout& form, std::vector<Line>& lines, const Key& key,
                           Access access) {
    auto* edit = new QLineEdit(this);
    edit->setToolTip(helpOf(key.label, key.help));
    edit->setAccessibleName(fromView(key.label));
    edit->setPlaceholderText(fromView(study::describe(key.dimension)));
    const MarkedEdit field = marked(edit, this);
    form.addRow(fromView(key.label), field.both);
    const auto member = key.amount;
    lines.push_back({[=, this](bool all) {
        const auto& value = access(claims_).*member;
        if (!all && isMarked(*field.rule))
            return;
        edit->setText(value ? QString::fromStdString(study::text(*value)) : QString());
        sayRule(*field.rule, {});
    }});
    connect(edit, &QLineEdit::editingFinished, this, [=, this, &key] {
        study::Claims claims = claims_;
        const QString typed = edit->text().trimmed();
        if (typed.isEmpty()) {
            access(claims).*member = std::nullopt;
        } else {
            const auto read = study::parseAmount(typed.toStdString(), key.dimension);
            if (!accept(*field.rule, read ? QString() : coreText(read.problems().front().message)))
                return;
            access(claims).*member = *read;
        }
        if (accept(*field.rule, ruleBroken(claims)))
            change(std::move(claims), fromView(key.label));
    });
}

template <class Key, class Access>
void ClaimsForm::addCount(QFormLayout& form, std::vector<Line>& lines, const Key& key,
                          Access access) {
    auto* edit = new NumberEdit(this);
    edit->setMayBeEmpty(true);
    edit->setWhole(key.whole);
    edit->setToolTip(helpOf(key.label, key.help));
    edit->setAccessibleName(fromView(key.label));
    const MarkedEdit field = marked(edit, this);
    form.addRow(fromView(key.label), field.both);
    const auto member = key.count;
    lines.push_back({[=, this](bool all) {
        if (!all && isMarked(*field.rule))
            return;
        edit->setNumber(access(claims_).*member);
        sayRule(*field.rule, {});
    }});
    const auto take = [=, this, &key](std::optional<double> number) {
        study::Claims claims = claims_;
        access(claims).*member = number;
        if (accept(*field.rule, ruleBroken(claims)))
            change(std::move(claims), fromView(key.label));
    };
    connect(edit, &NumberEdit::unreadable, this, [field](const QString& text) {
        sayRule(*field.rule, ClaimsForm::tr("“%1” is not a number").arg(text));
    });
    connect(edit, &NumberEdit::entered, this, take);
    connect(edit, &NumberEdit::stepped, this, [take](double number) { take(number); });
}

template <class Key, class Access>
void ClaimsForm::addChoice(QFormLayout& form, std::vector<Line>& lines, const Key& key,
                           Access access) {
    auto* box = new QComboBox(this);
    box->setToolTip(helpOf(key.label, key.help));
    box->setAccessibleName(fromView(key.label));
    box->addItem(ClaimsForm::tr("not given"));
    for (const study::ClaimWord& word : key.words)
        box->addItem(fromView(word.label));
    form.addRow(fromView(key.label), box);
    lines.push_back({[=, this, &key](bool) {
        const auto chosen = key.chosen(access(claims_));
        box->setCurrentIndex(chosen ? static_cast<int>(*chosen) + 1 : 0);
    }});
    connect(box, &QComboBox::activated, this, [=, this, &key](int index) {
        study::Claims claims = claims_;
        key.choose(access(claims),
                   index > 0 ? std::optional(static_cast<std::size_t>(index - 1)) : std::nullopt);
        change(std::move(claims), fromView(key.label));
    });
}

template <class Key, class Access>
void ClaimsForm::addFlag(QFormLayout& form, std::vector<Line>& lines, const Key& key,
                         Access access) {
    auto* box = new QComboBox(this);
    box->addItems({ClaimsForm::tr("not given"), ClaimsForm::tr("no"), ClaimsForm::tr("yes")});
    box->setToolTip(helpOf(key.label, key.help));
    box->setAccessibleName(fromView(key.label));
    form.addRow(fromView(key.label), box);
    const auto member = key.flag;
    lines.push_back({[=, this](bool) {
        const auto& value = access(claims_).*member;
        box->setCurrentIndex(!value ? 0 : *value ? 2 : 1);
    }});
    connect(box, &QComboBox::activated, this, [=, this, label = fromView(key.label)](int index) {
        study::Claims claims = claims_;
        access(claims).*member = index == 0 ? std::nullopt : std::optional(index == 2);
        change(std::move(claims), label);
    });
}

template <class Key, class Access>
void ClaimsForm::addKey(QFormLayout& form, std::vector<Line>& lines, const Key& key,
                        Access access) {
    switch (key.kind) {
    case Key::Kind::text:
        addText(form, lines, key, access);
        break;
    case Key::Kind::amount:
        addAmount(form, lines, key, access);
        break;
    case Key::Kind::count:
        addCount(form, lines, key, access);
        break;
    case Key::Kind::choice:
        addChoice(form, lines, key, access);
        break;
    case Key::Kind::flag:
        addFlag(form, lines, key, access);
        break;
    }
}

template <class Group, class Access>
void ClaimsForm::addGroup(QFormLayout& form, std::vector<Line>& lines, const Group& keys,
                          Access access) {
    for (const auto& key : keys)
        addKey(form, lines, key, access);
}

ClaimsForm::ClaimsForm(QWidget* parent, Extent extent)
    : QWidget(parent), column_(new QVBoxLayout(this)) {
    extent == Extent::everything ? buildEverything() : buildDraft();
    column_->addStretch(1);
}

void ClaimsForm::buildEverything() {
    addGroup(
        *addHeading(tr("Source")), lines_, study::claimHeadKeys(),
        [](auto& claims) -> auto& { return claims; });
    const QString titles[] = {tr("Engine"), tr("Published figures"), tr("Conditions of the power")};
    int number = 0;
    study::forEachGroup([&](const char*, const auto& keys, auto member) {
        addGroup(
            *addHeading(titles[number++]), lines_,
            keys, [member](auto& claims) -> auto& { return claims.*member; });
    });
    buildStatements();
}

void ClaimsForm::buildDraft() {
    const auto addFollowed = [this](const QString& title, const std::string& group,
                                    const auto& keys, auto member) {
        QFormLayout& form = *addHeading(title);
        for (const auto& key : keys) {
            if (draft::isFollowed(fmt::format("/{}/{}", group, key.name)))
                addKey(
                    form, lines_, key, [member](auto& claims) -> auto& { return claims.*member; });
        }
    };
    addFollowed(tr("Published figures"), "figures", study::claimFigureKeys(),
                &study::Claims::figures);
    addFollowed(tr("Engine"), "engine", study::claimEngineKeys(), &study::Claims::engine);
    addFollowed(tr("Conditions of the power"), "conditions", study::claimConditionKeys(),
                &study::Claims::conditions);
    addGroup(
        *addHeading(tr("Source")), lines_, study::claimHeadKeys(),
        [](auto& claims) -> auto& { return claims; });
}

void ClaimsForm::buildStatements() {
    addHeading(tr("Statements in words"));
    statements_ = new QWidget(this);
    new QVBoxLayout(statements_);
    statements_->layout()->setContentsMargins(0, 0, 0, 0);
    column_->addWidget(statements_);
    auto* add = new QPushButton(tr("Add a statement"), this);
    add->setToolTip(tr("A published sentence, to be checked against physics"));
    column_->addWidget(add, 0, Qt::AlignLeft);
    connect(add, &QPushButton::clicked, this, [this] {
        study::Claims claims = claims_;
        claims.statements.emplace_back();
        claims.statements.back().claim = tr("New statement").toStdString();
        change(std::move(claims), tr("Add a statement"));
        rebuildStatements();
    });
}

ClaimsForm::~ClaimsForm() = default;

QFormLayout* ClaimsForm::addHeading(const QString& title) {
    auto* heading = new QLabel(title, this);
    QFont bold = heading->font();
    bold.setBold(true);
    heading->setFont(bold);
    column_->addWidget(heading);
    auto* form = new QFormLayout;
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    column_->addLayout(form);
    return form;
}

void ClaimsForm::show(const study::Claims& claims) {
    const bool sameRows = claims.statements.size() == claims_.statements.size();
    const bool areOthers = claims != claims_;
    claims_ = claims;
    for (const Line& line : lines_)
        line.refresh(areOthers);
    if (!sameRows) {
        rebuildStatements();
        return;
    }
    for (const Line& line : statementLines_)
        line.refresh(areOthers);
}

void ClaimsForm::rebuildStatements() {
    if (!statements_)
        return;
    statementLines_.clear();
    while (QLayoutItem* item = statements_->layout()->takeAt(0)) {
        if (item->widget()) {
            item->widget()->hide();
            item->widget()->deleteLater();
        }
        delete item;
    }
    for (std::size_t i = 0; i < claims_.statements.size(); ++i)
        addStatement(i);
    for (const Line& line : statementLines_)
        line.refresh(true);
}

void ClaimsForm::addStatement(std::size_t index) {
    auto* box = new QWidget(statements_);
    auto* form = new QFormLayout(box);
    form->setContentsMargins(0, 0, 0, 8);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    addGroup(
        *form, statementLines_, study::statementKeys(), [index](auto& claims) -> auto& {
            return claims.statements[index];
        });
    // One row a key: those that another kind of statement has are not shown.
    statementLines_.push_back({[this, form, index](bool) {
        int row = 0;
        for (const auto& key : study::statementKeys())
            form->setRowVisible(row++, study::belongsTo(key, claims_.statements[index].kind));
    }});
    auto* remove = new QPushButton(tr("Remove this statement"), box);
    form->addRow(remove);
    statements_->layout()->addWidget(box);
    connect(remove, &QPushButton::clicked, this, [this, index] {
        study::Claims claims = claims_;
        claims.statements.erase(claims.statements.begin() + static_cast<std::ptrdiff_t>(index));
        change(std::move(claims), tr("Remove a statement"));
        rebuildStatements();
    });
}

void ClaimsForm::change(study::Claims claims, const QString& what) {
    if (claims == claims_)
        return;
    claims_ = std::move(claims);
    Q_EMIT edited(claims_, what);
}

} // namespace lobewright::ui
