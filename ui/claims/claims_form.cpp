#include "ui/claims/claims_form.h"

#include "core/claims/claims_file.h"
#include "core/claims/claims_keys.h"
#include "core/draft/brief.h"
#include "ui/base/core_text.h"
#include "ui/base/palette.h"
#include "ui/panels/number_edit.h"

#include <QApplication>
#include <QComboBox>
#include <QEvent>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>
#include <fmt/format.h>

#include <algorithm>
#include <iterator>

namespace lobewright::ui {

namespace {

constexpr int wantedAtOnce = 3;
/// Characters that a published figure, a count and a word need.
constexpr int amountWidth = 15, countWidth = 12; // "not given" in either language
/// Of every label, in average characters: all fields stand in one column.
constexpr int labelWidth = 24;

QString helpOf(TextId label, TextId help) {
    return help.empty() ? ClaimsForm::tr("%1, as it was published; empty: not published")
                              .arg(coreText(label))
                        : coreText(help);
}

void colour(QLabel& label, const QColor& tone) {
    QPalette palette = label.palette();
    palette.setColor(QPalette::WindowText, tone);
    label.setPalette(palette);
}

void sayRule(QLabel& rule, const QString& text) {
    colour(rule, Palette::of(rule).warning);
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

/// The editor with room for the rule that an entry broke and for what it would decide.
void ClaimsForm::finish(Line& line, QWidget* editor, const QString& label, const QString& help) {
    editor->setToolTip(help);
    editor->setAccessibleName(label);
    line.editor = editor;
    line.field = new QWidget(this);
    auto* column = new QVBoxLayout(line.field);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(editor);
    const auto addLine = [&](const char* name) {
        auto* text = new QLabel(line.field);
        text->setObjectName(QLatin1String(name));
        text->setTextFormat(Qt::PlainText); // what was typed is quoted
        text->setWordWrap(true);
        text->hide();
        column->addWidget(text);
        return text;
    };
    line.rule = addLine("problem");
    line.hint = addLine("wanted");
    auto* name = new QLabel(label, this);
    name->setBuddy(editor);
    name->setWordWrap(true);
    name->setFixedWidth(labelWidth * name->fontMetrics().averageCharWidth());
    line.form->addRow(name, line.field);
}

template <class Key, class Access>
void ClaimsForm::addText(Line& line, const Key& key, Access access) {
    auto* edit = new QLineEdit(this);
    finish(line, edit, coreText(key.label), helpOf(key.label, key.help));
    const auto member = key.text;
    line.isFilled = [=, this] { return !(access(claims_).*member).empty(); };
    line.refresh = [=, this, rule = line.rule](bool all) {
        if (!all && isMarked(*rule))
            return;
        edit->setText(QString::fromStdString(access(claims_).*member));
        edit->setCursorPosition(0);
        sayRule(*rule, {});
    };
    connect(edit, &QLineEdit::editingFinished, this,
            [=, this, rule = line.rule, label = coreText(key.label)] {
                study::Claims claims = claims_;
                access(claims).*member = edit->text().toStdString();
                if (accept(*rule, ruleBroken(claims)))
                    change(std::move(claims), label);
            });
}

template <class Key, class Access>
void ClaimsForm::addAmount(Line& line, const Key& key, Access access) {
    auto* edit = new QLineEdit(this);
    finish(line, edit, coreText(key.label),
           helpOf(key.label, key.help) + QLatin1Char('\n') +
               coreText(study::describe(key.dimension)));
    setCharacters(*edit, amountWidth);
    if (key.dimension != study::Dimension::fraction) // "%" would be misread where 1.1 is meant
        edit->setPlaceholderText(QString::fromUtf8(
            study::shownUnit(key.dimension).symbol.data(),
            static_cast<qsizetype>(study::shownUnit(key.dimension).symbol.size())));
    const auto member = key.amount;
    line.isFilled = [=, this] { return (access(claims_).*member).has_value(); };
    line.refresh = [=, this, rule = line.rule](bool all) {
        const auto& value = access(claims_).*member;
        if (!all && isMarked(*rule))
            return;
        edit->setText(value ? QString::fromStdString(study::text(*value)) : QString());
        sayRule(*rule, {});
    };
    connect(edit, &QLineEdit::editingFinished, this, [=, this, &key, rule = line.rule] {
        study::Claims claims = claims_;
        const QString typed = edit->text().trimmed();
        if (typed.isEmpty()) {
            access(claims).*member = std::nullopt;
        } else {
            const auto read = study::parseAmount(typed.toStdString(), key.dimension);
            if (!accept(*rule, read ? QString() : coreText(read.problems().front().message)))
                return;
            access(claims).*member = *read;
        }
        if (accept(*rule, ruleBroken(claims)))
            change(std::move(claims), coreText(key.label));
    });
}

template <class Key, class Access>
void ClaimsForm::addCount(Line& line, const Key& key, Access access) {
    auto* edit = new NumberEdit(this);
    edit->setMayBeEmpty(true);
    edit->setWhole(key.whole);
    finish(line, edit, coreText(key.label), helpOf(key.label, key.help));
    setCharacters(*edit, countWidth);
    const auto member = key.count;
    line.isFilled = [=, this] { return (access(claims_).*member).has_value(); };
    line.refresh = [=, this, rule = line.rule](bool all) {
        if (!all && isMarked(*rule))
            return;
        edit->setNumber(access(claims_).*member);
        sayRule(*rule, {});
    };
    const auto take = [=, this, &key, rule = line.rule](std::optional<double> number) {
        study::Claims claims = claims_;
        access(claims).*member = number;
        if (accept(*rule, ruleBroken(claims)))
            change(std::move(claims), coreText(key.label));
    };
    connect(edit, &NumberEdit::unreadable, this, [rule = line.rule](const QString& text) {
        sayRule(*rule, ClaimsForm::tr("“%1” is not a number").arg(text));
    });
    connect(edit, &NumberEdit::entered, this, take);
    connect(edit, &NumberEdit::stepped, this, [take](double number) { take(number); });
}

template <class Key, class Access>
void ClaimsForm::addChoice(Line& line, const Key& key, Access access) {
    QStringList words{ClaimsForm::tr("not given")};
    for (const study::ClaimWord& word : key.words)
        words << coreText(word.label);
    auto* box = wordBox(words, this);
    finish(line, box, coreText(key.label), helpOf(key.label, key.help));
    line.isFilled = [=, this, &key] { return key.chosen(access(claims_)).has_value(); };
    line.refresh = [=, this, &key](bool) {
        const auto chosen = key.chosen(access(claims_));
        box->setCurrentIndex(chosen ? static_cast<int>(*chosen) + 1 : 0);
    };
    connect(box, &QComboBox::activated, this, [=, this, &key](int index) {
        study::Claims claims = claims_;
        key.choose(access(claims),
                   index > 0 ? std::optional(static_cast<std::size_t>(index - 1)) : std::nullopt);
        change(std::move(claims), coreText(key.label));
    });
}

template <class Key, class Access>
void ClaimsForm::addFlag(Line& line, const Key& key, Access access) {
    auto* box =
        wordBox({ClaimsForm::tr("not given"), ClaimsForm::tr("no"), ClaimsForm::tr("yes")}, this);
    finish(line, box, coreText(key.label), helpOf(key.label, key.help));
    const auto member = key.flag;
    line.isFilled = [=, this] { return (access(claims_).*member).has_value(); };
    line.refresh = [=, this](bool) {
        const auto& value = access(claims_).*member;
        box->setCurrentIndex(!value ? 0 : *value ? 2 : 1);
    };
    connect(box, &QComboBox::activated, this, [=, this, label = coreText(key.label)](int index) {
        study::Claims claims = claims_;
        access(claims).*member = index == 0 ? std::nullopt : std::optional(index == 2);
        change(std::move(claims), label);
    });
}

template <class Key, class Access>
void ClaimsForm::addKey(Section& section, const Key& key, Access access) {
    Line line;
    line.form = section.form;
    line.path = fmt::format("{}/{}", section.path, key.name);
    switch (key.kind) {
    case Key::Kind::text:
        addText(line, key, access);
        break;
    case Key::Kind::amount:
        addAmount(line, key, access);
        break;
    case Key::Kind::count:
        addCount(line, key, access);
        break;
    case Key::Kind::choice:
        addChoice(line, key, access);
        break;
    case Key::Kind::flag:
        addFlag(line, key, access);
        break;
    }
    section.lines.push_back(std::move(line));
}

template <class Keys, class Access>
void ClaimsForm::addKeys(Section& section, const Keys& keys, Access access) {
    for (const auto& key : keys)
        addKey(section, key, access);
}

ClaimsForm::ClaimsForm(QWidget* parent, Extent extent)
    : QWidget(parent), extent_(extent), column_(new QVBoxLayout(this)) {
    extent == Extent::everything ? buildEverything() : buildDraft();
    column_->addStretch(1);
    refresh(true);
}

void ClaimsForm::buildEverything() {
    next_ = new QLabel(this);
    next_->setObjectName(QStringLiteral("next"));
    next_->setWordWrap(true);
    next_->setTextFormat(Qt::RichText);
    connect(next_, &QLabel::linkActivated, this, &ClaimsForm::focusEntry);
    column_->addWidget(next_);
    // What is asked for first is on top: figures, then the engine they are of.
    const auto addGroup = [this](const QString& title, const char* path, const auto& keys,
                                 auto member) {
        Section& section = addSection(title, path, *column_, this, sections_);
        addKeys(
            section, keys, [member](auto& claims) -> auto& { return claims.*member; });
    };
    addGroup(tr("Published figures"), "/figures", study::claimFigureKeys(),
             &study::Claims::figures);
    addGroup(tr("Engine"), "/engine", study::claimEngineKeys(), &study::Claims::engine);
    addGroup(tr("Conditions of the power"), "/conditions", study::claimConditionKeys(),
             &study::Claims::conditions);
    buildStatements();
    Section& source = addSection(tr("Source"), "", *column_, this, sections_);
    addKeys(
        source, study::claimHeadKeys(), [](auto& claims) -> auto& { return claims; });
}

void ClaimsForm::buildDraft() {
    const auto addFollowed = [this](const QString& title, const std::string& group,
                                    const auto& keys, auto member) {
        Section& section = addSection(title, fmt::format("/{}", group), *column_, this, sections_);
        for (const auto& key : keys) {
            if (draft::isFollowed(fmt::format("/{}/{}", group, key.name)))
                addKey(
                    section, key, [member](auto& claims) -> auto& { return claims.*member; });
        }
    };
    addFollowed(tr("Published figures"), "figures", study::claimFigureKeys(),
                &study::Claims::figures);
    addFollowed(tr("Engine"), "engine", study::claimEngineKeys(), &study::Claims::engine);
    addFollowed(tr("Conditions of the power"), "conditions", study::claimConditionKeys(),
                &study::Claims::conditions);
    Section& source = addSection(tr("Source"), "", *column_, this, sections_);
    addKeys(
        source, study::claimHeadKeys(), [](auto& claims) -> auto& { return claims; });
}

void ClaimsForm::buildStatements() {
    auto* heading = new QLabel(tr("Statements in words"), this);
    QFont bold = heading->font();
    bold.setBold(true);
    heading->setFont(bold);
    column_->addWidget(heading);
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
        focusEntry(QStringLiteral("/statements/%1").arg(claims_.statements.size() - 1));
    });
}

ClaimsForm::~ClaimsForm() {
    // A line that loses the keyboard as it goes would be read once more.
    for (QWidget* child : findChildren<QWidget*>())
        child->blockSignals(true);
}

ClaimsForm::Section& ClaimsForm::addSection(const QString& title, const std::string& path,
                                            QVBoxLayout& column, QWidget* parent,
                                            std::vector<std::unique_ptr<Section>>& to) {
    Section& section = *to.emplace_back(std::make_unique<Section>());
    section.path = path;
    auto* top = new QHBoxLayout;
    auto* heading = new QLabel(title, parent);
    QFont bold = heading->font();
    bold.setBold(true);
    heading->setFont(bold);
    top->addWidget(heading);
    section.more = new QToolButton(parent);
    section.more->setAutoRaise(true);
    section.more->setObjectName(QStringLiteral("more"));
    section.more->setAccessibleName(tr("Show all of %1").arg(title));
    section.more->setToolTip(tr("Show every entry of this group, or only what is filled in"));
    section.more->setVisible(extent_ == Extent::everything);
    top->addWidget(section.more);
    top->addStretch(1);
    column.addLayout(top);
    section.form = new QFormLayout;
    section.form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    section.form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    column.addLayout(section.form);
    connect(section.more, &QToolButton::clicked, this, [this, &section] {
        section.isOpen = !section.isOpen;
        fold(section);
    });
    return section;
}

void ClaimsForm::show(const study::Claims& claims) {
    const bool sameRows = claims.statements.size() == claims_.statements.size();
    const bool areOthers = claims != claims_;
    claims_ = claims;
    if (!sameRows)
        rebuildStatements();
    refresh(areOthers);
}

void ClaimsForm::refresh(bool all) {
    for (const auto* list : {&sections_, &statementSections_}) {
        for (const auto& section : *list) {
            for (const Line& line : section->lines)
                line.refresh(all);
        }
    }
    fold();
}

void ClaimsForm::setWanted(const std::vector<study::WantedNumber>& wanted) {
    const auto count = std::min(std::ssize(wanted), std::ptrdiff_t{wantedAtOnce});
    wanted_.assign(wanted.begin(), wanted.begin() + count);
    fold();
    sayNext();
}

/// "1 row", "3 rows", in the sentence of the line.
QString ClaimsForm::hintFor(const std::string& path) const {
    const auto found = std::ranges::find(wanted_, path, &study::WantedNumber::path);
    if (found == wanted_.end())
        return {};
    const auto count = static_cast<qsizetype>(found->rows.size());
    return count == 0   ? tr("decides %1").arg(coreText(found->decides))
           : count == 1 ? tr("would decide 1 row")
                        : tr("would decide %1 rows").arg(count);
}

void ClaimsForm::sayNext() {
    if (!next_)
        return;
    QString text;
    if (!wanted_.empty() && !wanted_.front().rows.empty()) {
        const auto& first = wanted_.front();
        const QString link = QStringLiteral("<a href=\"%1\">%2</a>")
                                 .arg(QString::fromStdString(first.path),
                                      inSentence(coreText(first.label)).toHtmlEscaped());
        const auto count = static_cast<qsizetype>(first.rows.size());
        text = count == 1 ? tr("Adding the %1 would decide 1 row.").arg(link)
                          : tr("Adding the %1 would decide %2 rows.").arg(link).arg(count);
    }
    next_->setText(text);
    next_->setVisible(!text.isEmpty());
}

bool ClaimsForm::isOpen(const Section& section, const Line& line) const {
    if (!line.belongs())
        return false;
    if (extent_ == Extent::draft || section.isOpen || line.isFilled() || isMarked(*line.rule))
        return true;
    const QWidget* focus = QApplication::focusWidget();
    const bool isHeld = focus && (focus == line.editor || line.editor->isAncestorOf(focus));
    return isHeld ||
           std::ranges::find(wanted_, line.path, &study::WantedNumber::path) != wanted_.end();
}

void ClaimsForm::fold(Section& section) {
    int hidden = 0;
    for (Line& line : section.lines) {
        const bool isShown = isOpen(section, line);
        line.form->setRowVisible(line.field, isShown);
        hidden += isShown || !line.belongs() ? 0 : 1;
        const QString hint = line.isFilled() ? QString() : hintFor(line.path);
        colour(*line.hint, Palette::of(*line.hint).quiet);
        line.hint->setText(hint);
        line.hint->setVisible(!hint.isEmpty());
    }
    if (extent_ == Extent::draft)
        return;
    section.more->setText(section.isOpen ? tr("fewer") : tr("%1 more").arg(hidden));
    section.more->setVisible(section.isOpen || hidden > 0);
}

void ClaimsForm::fold() {
    for (const auto* list : {&sections_, &statementSections_}) {
        for (const auto& section : *list)
            fold(*section);
    }
}

void ClaimsForm::focusEntry(const QString& path) {
    const std::string wanted = path.toStdString();
    for (const auto* list : {&sections_, &statementSections_}) {
        for (const auto& section : *list) {
            for (Line& line : section->lines) {
                if (line.path != wanted && section->path != wanted)
                    continue;
                line.form->setRowVisible(line.field, true);
                line.editor->setFocus(Qt::OtherFocusReason);
                Q_EMIT shown(line.field);
                return;
            }
        }
    }
}

void ClaimsForm::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange)
        fold();
}

void ClaimsForm::rebuildStatements() {
    if (!statements_)
        return;
    statementSections_.clear();
    while (QLayoutItem* item = statements_->layout()->takeAt(0)) {
        if (item->widget()) {
            // The line that loses the keyboard by this would take its text once more.
            for (QWidget* child : item->widget()->findChildren<QWidget*>())
                child->blockSignals(true);
            item->widget()->hide();
            item->widget()->deleteLater();
        }
        delete item;
    }
    for (std::size_t i = 0; i < claims_.statements.size(); ++i)
        addStatement(i);
    refresh(true);
}

void ClaimsForm::addStatement(std::size_t index) {
    auto* box = new QWidget(statements_);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 8);
    Section& section =
        addSection(tr("Statement %1").arg(index + 1), fmt::format("/statements/{}", index), *column,
                   box, statementSections_);
    for (const auto& key : study::statementKeys()) {
        addKey(
            section, key, [index](auto& claims) -> auto& { return claims.statements[index]; });
        // What a statement of this kind needs is open; where and when it was said is not.
        section.lines.back().belongs = [this, index, &key] {
            return study::belongsTo(key, claims_.statements[index].kind);
        };
        if (!key.kinds.empty())
            section.lines.back().isFilled = [] { return true; };
    }
    auto* remove = new QPushButton(tr("Remove this statement"), box);
    remove->setToolTip(tr("Takes the statement out of the sheet; can be undone"));
    column->addWidget(remove, 0, Qt::AlignLeft);
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
