#include "ui/claims/claims_form.h"

#include "core/draft/brief.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/type_scale.h"
#include "ui/base/watching.h"
#include "ui/claims/claims_line.h"

#include <QApplication>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>
#include <fmt/format.h>

#include <algorithm>
#include <iterator>

namespace lobewright::ui {

namespace {

constexpr int wantedAtOnce = 3;

} // namespace

ClaimsForm::ClaimsForm(QWidget* parent, Extent extent)
    : QWidget(parent), extent_(extent), column_(new QVBoxLayout(this)) {
    extent == Extent::everything ? buildEverything() : buildDraft();
    column_->addStretch(1);
    whenLookChanges(*this, [this] { fold(); });
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
        for (const auto& key : keys) {
            addLine(section, claimEntry(
                                 fmt::format("{}/{}", path, key.name),
                                 key, [member](auto& all) -> auto& { return all.*member; }));
        }
    };
    addGroup(tr("Published figures"), "/figures", study::claimFigureKeys(),
             &study::Claims::figures);
    addGroup(tr("Engine"), "/engine", study::claimEngineKeys(), &study::Claims::engine);
    addGroup(tr("Conditions of the power"), "/conditions", study::claimConditionKeys(),
             &study::Claims::conditions);
    buildStatements();
    buildSource();
}

void ClaimsForm::buildDraft() {
    const auto addFollowed = [this](const QString& title, const std::string& group,
                                    const auto& keys, auto member) {
        Section& section = addSection(title, fmt::format("/{}", group), *column_, this, sections_);
        for (const auto& key : keys) {
            const std::string path = fmt::format("/{}/{}", group, key.name);
            if (draft::isFollowed(path)) {
                addLine(section,
                        claimEntry(
                            path, key, [member](auto& all) -> auto& { return all.*member; }));
            }
        }
    };
    addFollowed(tr("Published figures"), "figures", study::claimFigureKeys(),
                &study::Claims::figures);
    addFollowed(tr("Engine"), "engine", study::claimEngineKeys(), &study::Claims::engine);
    addFollowed(tr("Conditions of the power"), "conditions", study::claimConditionKeys(),
                &study::Claims::conditions);
    buildSource();
}

void ClaimsForm::buildSource() {
    Section& source = addSection(tr("Source"), "", *column_, this, sections_);
    for (const auto& key : study::claimHeadKeys()) {
        addLine(source,
                claimEntry(
                    fmt::format("/{}", key.name), key, [](auto& all) -> auto& { return all; }));
    }
}

ClaimsForm::Line& ClaimsForm::addLine(Section& section, ClaimEntry entry) {
    auto* row = new ClaimsLine(std::move(entry), claims_, *section.form, this);
    connect(row, &ClaimsLine::edited, this, &ClaimsForm::change);
    return section.lines.emplace_back(Line{row});
}

void ClaimsForm::buildStatements() {
    auto* heading = new QLabel(tr("Statements in words"), this);
    heading->setFont(inBold(heading->font()));
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
    heading->setFont(inBold(heading->font()));
    top->addWidget(heading);
    section.more = new QToolButton(parent);
    section.more->setAutoRaise(true);
    section.more->setObjectName(QStringLiteral("more"));
    describe(*section.more, tr("Show all of %1").arg(title),
             tr("Show every entry of this group, or only what is filled in"));
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
                line.row->refresh(all);
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
    if (extent_ == Extent::draft || section.isOpen || line.isAlwaysOpen || line.row->isFilled() ||
        line.row->isMarked())
        return true;
    const QWidget* focus = QApplication::focusWidget();
    return (focus && line.row->isAncestorOf(focus)) ||
           std::ranges::find(wanted_, line.row->path(), &study::WantedNumber::path) !=
               wanted_.end();
}

void ClaimsForm::fold(Section& section) {
    int hidden = 0;
    for (Line& line : section.lines) {
        const bool isShown = isOpen(section, line);
        line.row->setShown(isShown);
        hidden += isShown || !line.belongs() ? 0 : 1;
        const bool isSettled = line.isAlwaysOpen || line.row->isFilled();
        line.row->setHint(isSettled ? QString() : hintFor(line.row->path()));
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
                if (line.row->path() != wanted && section->path != wanted)
                    continue;
                line.row->setShown(true);
                line.row->editor().setFocus(Qt::OtherFocusReason);
                Q_EMIT shown(line.row);
                return;
            }
        }
    }
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
        Line& line = addLine(
            section, claimEntry(
                         fmt::format("{}/{}", section.path, key.name),
                         key, [index](auto& all) -> auto& { return all.statements[index]; }));
        // What a statement of this kind needs is open; where and when it was said is not.
        line.belongs = [this, index, &key] {
            return study::belongsTo(key, claims_.statements[index].kind);
        };
        line.isAlwaysOpen = !key.kinds.empty();
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
