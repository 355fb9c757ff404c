#include "ui/panels/number_panel.h"

#include "core/design/schedules.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/layouts.h"
#include "ui/panels/chapters.h"
#include "ui/panels/field_block.h"
#include "ui/panels/field_editor.h"
#include "ui/panels/field_note.h"
#include "ui/panels/known_dialog.h"
#include "ui/panels/number_chapter.h"
#include "ui/panels/origin_words.h"
#include "ui/panels/track_shape_choice.h"

#include <QAbstractSpinBox>
#include <QAccessible>
#include <QComboBox>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace lobewright::ui {

namespace {

/// "Inlet track, segment 2: span" for the undo list.
QString longLabel(const design::Design& design, const design::Field& field) {
    const QString label = inSentence(coreText(field.label));
    const QString& chapter = chapters()[chapterOf(field)].titleOf(design);
    const QString group = coreText(field.groupLabel);
    const bool inList = !group.isEmpty() && group.back().isDigit();
    return inList ? NumberPanel::tr("%1, %2: %3").arg(chapter, inSentence(group), label)
                  : NumberPanel::tr("%1: %2").arg(chapter, label);
}

/// To the first part of an input that can take it: of "MBT or a number" that may be the list.
void giveKeyboard(QWidget& input) {
    for (auto* part : input.findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
        if (part->isEnabled() && part->focusPolicy() != Qt::NoFocus) {
            part->setFocus(Qt::ShortcutFocusReason);
            return;
        }
    }
    QWidget* keyboard = input.focusProxy() ? input.focusProxy() : &input;
    keyboard->setFocus(Qt::ShortcutFocusReason);
}

} // namespace

NumberPanel::NumberPanel(QWidget* parent)
    : QWidget(parent), search_(new QLineEdit(this)), origins_(new QLabel(this)),
      nothing_(new QLabel(this)), helpSearch_(new QToolButton(this)),
      scroll_(new QScrollArea(this)) {
    makeSearch(*search_, tr("Find an input"),
               tr("By its name, its group, its explanation or its key in the file"));
    columnOf(this, {8, 8, 0, 0}, 4, {search_, origins_, nothing_, helpSearch_, {scroll_, 1}});
    origins_->setObjectName(QStringLiteral("origins"));
    origins_->setWordWrap(true);
    origins_->setToolTip(tr("Where the inputs come from; click one to see only those"));
    origins_->hide();
    connect(origins_, &QLabel::linkActivated, this, [this](const QString& link) {
        const auto origin = static_cast<design::Origin>(link.section(QLatin1Char(':'), 1).toInt());
        shownOrigin_ = shownOrigin_ == origin ? std::nullopt : std::optional(origin);
        showOrigins();
        search(search_->text());
    });
    helpSearch_->setObjectName(QStringLiteral("searchHelp"));
    helpSearch_->setText(tr("Search the help"));
    helpSearch_->setToolTip(tr("Pages of the help that hold these words"));
    helpSearch_->hide();
    connect(helpSearch_, &QToolButton::clicked, this,
            [this] { Q_EMIT helpWanted(search_->text()); });
    makeParagraph(*nothing_, "nothingFound");
    nothing_->hide();
    auto* content = new QWidget(scroll_);
    note_ = new FieldNote(content);
    auto* column = columnOf(content, {0, 0, 8, 8}, 0, {});
    buildChapters(column);
    column->addStretch(1);
    makeScroll(*scroll_, content);
    connect(search_, &QLineEdit::textChanged, this, &NumberPanel::search);
    connect(search_, &QLineEdit::returnPressed, this, [this] {
        QWidget* found = search_->text().isEmpty() ? nullptr : bestFound();
        if (!found)
            return;
        scroll_->ensureWidgetVisible(found, 10, 60);
        giveKeyboard(*found);
    });
}

void NumberPanel::buildChapters(QVBoxLayout* layout) {
    for (const Chapter& about : chapters()) {
        auto* chapter = new NumberChapter(about, this);
        layout->addWidget(chapter);
        chapters_.push_back(chapter);
        connect(chapter, &NumberChapter::folding, this, &NumberPanel::clearProblem);
        connect(chapter, &NumberChapter::blockMade, this, &NumberPanel::connectBlock);
        if (about.key == QLatin1String("inlet-track"))
            addShapeChoice(*chapter, End::inlet);
        if (about.key == QLatin1String("exhaust-track"))
            addShapeChoice(*chapter, End::exhaust);
        chapter->setOpen(about.opensFirst);
    }
}

void NumberPanel::addShapeChoice(NumberChapter& chapter, End end) {
    auto* choice = new TrackShapeChoice(end, &chapter);
    chapter.addAbove(choice);
    shapes_[end] = {&chapter, choice};
    connect(choice, &TrackShapeChoice::knotsWanted, this, [this, end] { Q_EMIT knotsWanted(end); });
    connect(choice, &TrackShapeChoice::shapeWanted, this, [this, end](editing::TrackShape shape) {
        asked_.clear();
        const auto edit = editing::shapeEdit(design_, end, shape);
        showShapes();
        if (edit)
            Q_EMIT edited(*edit);
    });
}

void NumberPanel::showShapes() {
    for (NumberChapter* chapter : chapters_)
        chapter->nameFor(design_);
    for (const End end : bothEnds) {
        const auto& [chapter, choice] = shapes_[end];
        chapter->setThere(design_.mechanism.uncovers(end) == end); // a head has no track
        choice->show(design_);
    }
}

void NumberPanel::show(const design::Design& design) {
    design_ = design;
    clearProblem();
    std::vector<NumberChapter::Groups> perChapter(chapters_.size());
    for (design::Field& field : design::fields(design::atItsSpeed(design))) {
        auto& groups = perChapter[chapterOf(field)];
        // A field beside sections of its group comes back to it: look for the group from the end.
        const auto found = std::ranges::find_if(
            groups, [&](const auto& group) { return group.front().group == field.group; });
        if (found == groups.end())
            groups.push_back({std::move(field)});
        else
            found->push_back(std::move(field));
    }
    bool isNew = false;
    for (size_t i = 0; i < chapters_.size(); ++i)
        isNew = chapters_[i]->showFields(perChapter[i]) || isNew;
    if (isNew)
        chainFocus();
    showShapes();
    showOrigins();
    showSchedules();
    if (!search_->text().isEmpty() || shownOrigin_)
        search(search_->text());
}

void NumberPanel::showOrigins() {
    const bool hasOrigins = !design_.knowledge.empty();
    if (!hasOrigins)
        shownOrigin_.reset();
    if (origins_->isVisibleTo(this) != hasOrigins)
        origins_->setVisible(hasOrigins);
    if (hasOrigins) {
        QString text = originCountsText(design::originCounts(design_), true);
        if (shownOrigin_) {
            text += QStringLiteral(" – ") + tr("only %1 <a href=\"origin:%2\">(show all)</a>")
                                                .arg(originWord(*shownOrigin_))
                                                .arg(static_cast<int>(*shownOrigin_));
        }
        if (origins_->text() != text)
            origins_->setText(text);
    }
    for (const NumberChapter* chapter : chapters_) {
        for (FieldBlock* block : chapter->blocks())
            block->showOrigins(design_);
    }
}

void NumberPanel::showSchedules() {
    for (NumberChapter* chapter : chapters_) {
        if (chapter->key() == QLatin1String("schedules"))
            chapter->setThere(!design_.schedules.empty());
        for (FieldBlock* block : chapter->blocks())
            block->showSchedules(design_);
    }
}

void NumberPanel::removeSchedule(const std::string& path) {
    const auto field = design::findField(design_, path);
    if (!field)
        return;
    Edit edit;
    edit.text = tr("Remove the schedule of %1").arg(longLabel(design_, *field));
    edit.replacement = design::withoutSchedule(design_, path);
    Q_EMIT edited(edit);
}

void NumberPanel::askOrigin(const std::string& path) {
    const auto field = design::findField(design_, path);
    if (!field || field->kind == design::FieldKind::text)
        return;
    KnownDialog dialog(design_, *field, this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    Edit edit;
    edit.text = tr("Origin of %1").arg(longLabel(design_, *field));
    edit.knowledge = dialog.knowledge();
    Q_EMIT edited(edit);
}

void NumberPanel::takeOwnChoice(const std::string& path) {
    const auto field = design::findField(design_, path);
    if (!field)
        return;
    Edit edit;
    edit.text = tr("%1 is a choice").arg(longLabel(design_, *field));
    edit.knowledge = design_.knowledge;
    edit.knowledge->erase(path);
    Q_EMIT edited(edit);
}

bool NumberPanel::editOriginHere() {
    for (const QWidget* widget = focusWidget(); widget; widget = widget->parentWidget()) {
        if (const auto* editor = qobject_cast<const FieldEditor*>(widget)) {
            askOrigin(editor->path());
            return true;
        }
    }
    return false;
}

std::optional<std::set<std::string>> NumberPanel::shownPaths() const {
    if (!shownOrigin_)
        return std::nullopt;
    std::set<std::string> paths;
    for (const auto& [path, known] : design_.knowledge) {
        if (known.origin == *shownOrigin_)
            paths.insert(path);
    }
    return paths;
}

/// The tabulator goes down the panel: blocks are made later than the headings below them.
void NumberPanel::chainFocus() {
    QWidget* last = search_;
    const auto follow = [&last](QWidget* widget) {
        const QWidget* owner = widget->parentWidget();
        const bool isPart = qobject_cast<const QComboBox*>(owner) ||
                            qobject_cast<const QAbstractSpinBox*>(owner) ||
                            widget->window() != last->window();
        if (isPart || !(widget->focusPolicy() & Qt::TabFocus))
            return;
        setTabOrder(last, widget);
        last = widget;
    };
    for (const NumberChapter* chapter : chapters_) {
        for (QWidget* block : chapter->inOrder()) {
            const auto* fields = qobject_cast<FieldBlock*>(block);
            for (QWidget* part : fields ? fields->inOrder() : std::vector<QWidget*>{block}) {
                follow(part);
                for (QWidget* widget : part->findChildren<QWidget*>())
                    follow(widget);
            }
        }
    }
}

void NumberPanel::connectBlock(FieldBlock* block) {
    connect(block, &FieldBlock::wanted, this,
            [this](const std::string& path, const design::FieldValue& value) {
                ask(path, value, false);
            });
    connect(block, &FieldBlock::stepped, this,
            [this](const std::string& path, const design::FieldValue& value) {
                ask(path, value, true);
            });
    connect(block, &FieldBlock::stepsDone, this, &NumberPanel::editFinished);
    connect(
        block, &FieldBlock::unreadable, this, [this](const std::string& path, const QString& text) {
            asked_ = path;
            showProblems(
                {{path,
                  tr("“%1” is not a number; the value stays as it was.").arg(text).toStdString()}});
        });
    connect(block, &FieldBlock::touched, this, &NumberPanel::clearProblem);
    connect(block, &FieldBlock::originWanted, this, &NumberPanel::askOrigin);
    connect(block, &FieldBlock::ownChoiceWanted, this, &NumberPanel::takeOwnChoice);
    connect(block, &FieldBlock::rowChangeWanted, this, &NumberPanel::askRowChange);
    connect(block, &FieldBlock::knotsWanted, this, &NumberPanel::knotsWanted);
    connect(block, &FieldBlock::scheduleWanted, this, [this](const std::string& path) {
        Q_EMIT scheduleWanted(QString::fromStdString(path));
    });
    connect(block, &FieldBlock::noScheduleWanted, this, &NumberPanel::removeSchedule);
}

void NumberPanel::ask(const std::string& path, const design::FieldValue& value, bool step) {
    clearProblem();
    asked_ = path;
    const auto field = design::findField(design_, path);
    if (!field)
        return;
    if (const auto problem = editing::spanProblem(design_, path, value)) {
        showProblems({*problem});
        return;
    }
    Edit edit = editing::fieldEdit(design_, path, value, longLabel(design_, *field).toStdString());
    if (step)
        edit.mergeKey = QString::fromStdString(path);
    Q_EMIT edited(edit);
}

void NumberPanel::askRowChange(const std::string& list, int row, editing::RowChange change) {
    clearProblem();
    asked_ = list + '/' + std::to_string(row);
    if (const auto edit = editing::rowEdit(design_, list, row, change))
        Q_EMIT edited(*edit);
    else {
        showProblems({{asked_, tr("This row cannot be changed that way: the track would not come "
                                  "back to where it starts.")
                                   .toStdString()}});
    }
}

void NumberPanel::showProblems(const Problems& problems) {
    if (problems.empty())
        return;
    QStringList words;
    for (const Problem& problem : problems) {
        const auto other =
            problem.path == asked_ ? std::nullopt : design::findField(design_, problem.path);
        const QString rule = coreText(problem.message);
        words << (other ? tr("%1: %2").arg(longLabel(design_, *other), rule) : rule);
    }
    words.removeDuplicates();
    // At the field that was edited; else at the field that the rule names.
    for (const std::string& path : {asked_, problems.front().path}) {
        FieldBlock* block = blockOf(path);
        if (!block)
            continue;
        block->unfold(path);
        note_->showUnder(*block->anchor(path), words.join(QLatin1Char('\n')));
        // The editor still shows what was asked for; the design kept its value.
        if (const auto field = design::findField(design_, path); field && block->editor(path))
            block->editor(path)->show(*field);
        return;
    }
}

void NumberPanel::clearProblem() {
    note_->hide();
}

void NumberPanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && note_->isVisible())
        clearProblem();
    else
        QWidget::keyPressEvent(event);
}

FieldBlock* NumberPanel::blockOf(const std::string& path) const {
    for (const NumberChapter* chapter : chapters_) {
        for (FieldBlock* block : chapter->blocks()) {
            if (block->editor(path) || (!path.empty() && block->group() == path))
                return block;
        }
    }
    return nullptr;
}

void NumberPanel::goTo(const QString& path) {
    shownOrigin_.reset();
    search_->clear();
    showOrigins();
    search({});
    const std::string wanted = path.toStdString();
    for (NumberChapter* chapter : chapters_) {
        for (FieldBlock* block : chapter->blocks()) {
            // A list or section named by a check: its first field.
            const bool exact = block->editor(wanted) != nullptr;
            if (!exact && block->group() != wanted && !block->group().starts_with(wanted + '/'))
                continue;
            chapter->setOpen(true);
            block->unfold(wanted);
            QWidget* target = exact ? static_cast<QWidget*>(block->editor(wanted)) : block;
            // The layout of a chapter just opened is done in the next round of events.
            QTimer::singleShot(0, target, [this, target] {
                scroll_->ensureWidgetVisible(target, 10, 60);
                giveKeyboard(*target);
            });
            return;
        }
    }
}

void NumberPanel::focusSearch() {
    search_->setFocus(Qt::ShortcutFocusReason);
    search_->selectAll();
}

QWidget* NumberPanel::bestFound() const {
    std::pair<Match, QWidget*> found{Match::none, nullptr};
    for (const NumberChapter* chapter : chapters_) {
        if (!chapter->isFound())
            continue;
        for (const FieldBlock* block : chapter->blocks()) {
            if (const auto [match, editor] = block->best(search_->text()); match > found.first)
                found = {match, editor};
        }
    }
    return found.second;
}

void NumberPanel::search(const QString& text) {
    clearProblem();
    bool isFound = false;
    const auto only = shownPaths();
    for (NumberChapter* chapter : chapters_)
        isFound = chapter->filter(text, only ? &*only : nullptr) || isFound;
    nothing_->setVisible(!text.isEmpty() && !isFound);
    helpSearch_->setVisible(!nothing_->isHidden());
    if (nothing_->isHidden())
        return;
    nothing_->setText(tr("No input has “%1” in its name or its explanation.").arg(text));
    nothing_->setAccessibleName(nothing_->text());
    QAccessibleEvent alert(nothing_, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

QStringList NumberPanel::openChapters() const {
    QStringList keys;
    for (const NumberChapter* chapter : chapters_) {
        if (chapter->isOpen())
            keys << chapter->key();
    }
    return keys;
}

void NumberPanel::setOpenChapters(const QStringList& keys) {
    for (NumberChapter* chapter : chapters_)
        chapter->setOpen(keys.contains(chapter->key()));
}

} // namespace lobewright::ui
