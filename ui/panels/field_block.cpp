#include "ui/panels/field_block.h"

#include "core/design/schedules.h"
#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/type_scale.h"
#include "ui/base/units.h"
#include "ui/panels/field_editor.h"
#include "ui/panels/origin_words.h"
#include "ui/panels/search_words.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QMenu>
#include <QToolButton>

#include <algorithm>
#include <charconv>
#include <map>
#include <utility>

namespace lobewright::ui {

namespace {

/// Last part of the path as a row number, −1 when it is a word.
int rowOf(const std::string& group) {
    const auto slash = group.rfind('/');
    if (slash == std::string::npos)
        return -1;
    int row = -1;
    const char* end = group.data() + group.size();
    const auto read = std::from_chars(group.data() + slash + 1, end, row);
    return read.ec == std::errc() && read.ptr == end ? row : -1;
}

/// Whether half the width of the panel would cut a choice short.
bool hasLongWords(const design::Field& field) {
    constexpr qsizetype most = 14; // letters
    return field.kind == design::FieldKind::choice &&
           std::ranges::any_of(field.choiceLabels,
                               [](TextId label) { return coreText(label).size() > most; });
}

/// Nothing is given, or so much of it as there is where nobody thought of it.
bool isUnused(const design::Field& field) {
    const bool isNumber =
        field.kind == design::FieldKind::number || field.kind == design::FieldKind::integer;
    if (!isNumber || !field.choices.empty())
        return false;
    const auto* number = std::get_if<double>(&field.value);
    return std::holds_alternative<std::monostate>(field.value) ||
           (number && *number == 0.0 && field.range.min == 0.0 && !field.range.minExcluded &&
            field.range.max > 0.0);
}

bool matches(const design::Field& field, const QString& text) {
    const auto has = [&](const Message& in) {
        return coreText(in).contains(text, Qt::CaseInsensitive);
    };
    return has(field.label) || has(field.groupLabel) || has(field.help) ||
           QString::fromStdString(field.path).contains(text, Qt::CaseInsensitive) ||
           isMeantBy(field.path, text);
}

} // namespace

Match matchOf(const QString& name, const QString& text) {
    if (name.compare(text, Qt::CaseInsensitive) == 0)
        return Match::exactly;
    if (name.startsWith(text, Qt::CaseInsensitive))
        return Match::atTheBeginning;
    return name.contains(text, Qt::CaseInsensitive) ? Match::within : Match::none;
}

FieldBlock::FieldBlock(std::vector<design::Field> fields, bool withHeading, QWidget* parent)
    : QWidget(parent), group_(fields.front().group), row_(rowOf(group_)),
      grid_(new QGridLayout(this)) {
    grid_->setContentsMargins(0, 4, 0, 8);
    grid_->setHorizontalSpacing(8);
    grid_->setVerticalSpacing(4);
    grid_->setColumnStretch(0, 1);
    grid_->setColumnStretch(1, 1);
    if (row_ >= 0)
        list_ = group_.substr(0, group_.rfind('/'));
    if (row_ < 0 && editing::isRowList(group_)) {
        list_ = group_;
        row_ = static_cast<int>(fields.size()) - 1; // rows of one number each: grow at the end
    }
    if (withHeading || !list_.empty()) {
        addHeading();
        heading_->setText(coreText(fields.front().groupLabel));
    }
    for (const design::Field& field : fields) {
        order_.push_back(field.path);
        if (row_ >= 0 && list_ != group_)
            addCompact(field);
        else
            addLine(field);
    }
    if (list_.empty())
        foldUnused(fields);
}

/// Two rows or more that say nothing make room for one that says how many they are; they are found
/// by the search and come out when they are given.
void FieldBlock::foldUnused(const std::vector<design::Field>& fields) {
    constexpr std::size_t fewest = 2;
    for (const design::Field& field : fields) {
        if (isUnused(field))
            folded_.insert(field.path);
    }
    if (folded_.size() < fewest || folded_.size() == fields.size())
        folded_.clear();
    if (folded_.empty())
        return;
    more_ = new QToolButton(this);
    more_->setObjectName(QStringLiteral("unusedInputs"));
    more_->setAutoRaise(true);
    more_->setArrowType(Qt::RightArrow);
    more_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    connect(more_, &QToolButton::clicked, this, [this] {
        folded_.clear();
        showFolded();
        for (const std::string& path : order_)
            showCell(cells_.at(path), true);
    });
    grid_->addWidget(more_, line_++, 0, 1, 2, Qt::AlignLeft);
    for (const std::string& path : folded_)
        showCell(cells_.at(path), false);
    showFolded();
}

void FieldBlock::showCell(const Cell& cell, bool shown) {
    if (cell.editor->isHidden() == !shown)
        return;
    cell.editor->setVisible(shown);
    cell.caption->setVisible(shown);
}

/// How many they are, and which.
void FieldBlock::showFolded() {
    if (!more_)
        return;
    QStringList names;
    for (const std::string& path : order_) {
        if (folded_.contains(path))
            names << coreText(cells_.at(path).editor->field().label);
    }
    more_->setText(tr("Not used: %1").arg(names.size()));
    more_->setToolTip(tr("Show them: %1").arg(names.join(QStringLiteral(", "))));
    more_->setVisible(!names.isEmpty());
}

void FieldBlock::unfold(const std::string& path) {
    if (folded_.erase(path) == 0)
        return;
    showCell(cells_.at(path), true);
    showFolded();
}

void FieldBlock::addHeading() {
    heading_ = new QLabel(this);
    heading_->setFont(inBold(heading_->font()));
    grid_->addWidget(heading_, line_, 0);
    if (editing::isRowList(list_)) {
        rowMenu_ = wordButton(tr("Change"), tr("Add, remove, split or move this row"), this);
        connect(rowMenu_, &QToolButton::clicked, this, &FieldBlock::showRowMenu);
        grid_->addWidget(rowMenu_, line_, 1, Qt::AlignRight);
    }
    ++line_;
}

/// A button behind the value, as wide as some letters; hidden until it has something to say.
QToolButton* FieldBlock::addMark(FieldEditor& editor, const char* name, const QString& letters) {
    auto* mark = new QToolButton(&editor);
    mark->setObjectName(QLatin1String(name));
    mark->setAutoRaise(true);
    mark->setFixedWidth(fontMetrics().horizontalAdvance(letters) + 4);
    mark->hide();
    editor.layout()->addWidget(mark);
    return mark;
}

FieldBlock::Cell FieldBlock::makeCell(const design::Field& field) {
    Cell cell{new FieldEditor(field, this), new QLabel(coreText(field.label), this), nullptr,
              nullptr};
    cell.caption->setBuddy(cell.editor);
    cell.caption->setToolTip(fieldHelp(field));
    const std::string path = field.path;
    cell.follows = addMark(*cell.editor, "follows", QStringLiteral("f(n)"));
    cell.follows->setText(QStringLiteral("f(n)"));
    describe(*cell.follows, tr("Follows the speed"), tr("Follows the speed"));
    connect(cell.follows, &QToolButton::clicked, this, [this, path, mark = cell.follows] {
        showScheduleMenu(path, mark->mapToGlobal(QPoint(0, mark->height())));
    });
    cell.mark = addMark(*cell.editor, "origin", QStringLiteral("m"));
    describe(*cell.mark, tr("Origin"), tr("Origin and range of this input"));
    connect(cell.mark, &QToolButton::clicked, this, [this, path, mark = cell.mark] {
        showOriginMenu(path, mark->mapToGlobal(QPoint(0, mark->height())));
    });
    if (field.kind != design::FieldKind::text) {
        cell.caption->setContextMenuPolicy(Qt::CustomContextMenu);
        connect(cell.caption, &QWidget::customContextMenuRequested, this,
                [this, path, caption = cell.caption](const QPoint& at) {
                    showOriginMenu(path, caption->mapToGlobal(at));
                });
    }
    connect(cell.editor, &FieldEditor::wanted, this,
            [this, path](const design::FieldValue& value) { Q_EMIT wanted(path, value); });
    connect(cell.editor, &FieldEditor::stepped, this,
            [this, path](const design::FieldValue& value) { Q_EMIT stepped(path, value); });
    connect(cell.editor, &FieldEditor::stepsDone, this, &FieldBlock::stepsDone);
    connect(cell.editor, &FieldEditor::touched, this, &FieldBlock::touched);
    connect(cell.editor, &FieldEditor::unreadable, this,
            [this, path](const QString& text) { Q_EMIT unreadable(path, text); });
    cells_.emplace(path, cell);
    return cell;
}

void FieldBlock::addLine(const design::Field& field) {
    const Cell cell = makeCell(field);
    cell.caption->setWordWrap(true);
    if (field.path == "/notes" || hasLongWords(field)) {
        grid_->addWidget(cell.caption, line_, 0, 1, 2);
        grid_->addWidget(cell.editor, ++line_, 0, 1, 2);
    } else {
        grid_->addWidget(cell.caption, line_, 0);
        grid_->addWidget(cell.editor, line_, 1);
    }
    ++line_;
}

void FieldBlock::addCompact(const design::Field& field) {
    const Cell cell = makeCell(field);
    cell.caption->setFont(sized(cell.caption->font(), TypeSize::small));
    const bool isWide = hasLongWords(field);
    if (isWide && column_ == 1) {
        column_ = 0;
        line_ += 2;
    }
    grid_->addWidget(cell.caption, line_, column_);
    grid_->addWidget(cell.editor, line_ + 1, column_, 1, isWide ? 2 : 1);
    column_ = isWide ? 0 : 1 - column_;
    if (column_ == 0)
        line_ += 2;
}

bool FieldBlock::holds(const std::vector<design::Field>& fields) const {
    return fields.front().group == group_ &&
           std::ranges::equal(fields, order_, {}, &design::Field::path);
}

void FieldBlock::show(const std::vector<design::Field>& fields) {
    for (const design::Field& field : fields) {
        cells_.at(field.path).editor->show(field);
        if (!isUnused(field))
            unfold(field.path);
    }
}

FieldEditor* FieldBlock::editor(const std::string& path) const {
    const auto found = cells_.find(path);
    return found == cells_.end() ? nullptr : found->second.editor;
}

QWidget* FieldBlock::anchor(const std::string& path) const {
    if (QWidget* field = editor(path))
        return field;
    return heading_ ? static_cast<QWidget*>(heading_) : editor(order_.front());
}

void FieldBlock::showOrigins(const design::Design& design) {
    for (auto& [path, cell] : cells_) {
        const design::Known known = design::knownOf(design, path);
        const QString letter = originLetter(known.origin);
        if (cell.mark->text() != letter)
            cell.mark->setText(letter);
        const bool isMarked = !letter.isEmpty();
        if (isMarked)
            unfold(path);
        if (cell.mark->isVisibleTo(cell.editor) != isMarked)
            cell.mark->setVisible(isMarked);
        if (isMarked) {
            const QString help = originHelp(cell.editor->field(), known);
            describe(*cell.mark, tr("Origin: %1").arg(originWord(known.origin)), help);
        }
    }
}

void FieldBlock::showSchedules(const design::Design& design) {
    for (auto& [path, cell] : cells_) {
        const design::Schedule* schedule = design::scheduleOf(design, path);
        cell.editor->setFollowsSpeed(schedule != nullptr);
        if (cell.follows->isVisibleTo(cell.editor) != (schedule != nullptr))
            cell.follows->setVisible(schedule != nullptr);
        if (schedule == nullptr)
            continue;
        unfold(path);
        const auto* value = std::get_if<double>(&cell.editor->field().value);
        cell.follows->setToolTip(
            tr("Follows the speed by a schedule, points: %1. It is %2 at the present %3 rpm. "
               "Changed on the strip below the torque curve.")
                .arg(schedule->speed.size())
                .arg(value ? quantityText(*value, QString::fromStdString(cell.editor->field().unit))
                           : QString(),
                     QLocale().toString(design.running.speed / units::revPerMinute, 'g', 6)));
    }
}

void FieldBlock::showScheduleMenu(const std::string& path, const QPoint& place) {
    QMenu menu(this);
    menu.addAction(tr("&Show the schedule"), this, [&] { Q_EMIT scheduleWanted(path); });
    menu.addAction(tr("&Remove the schedule"), this, [&] { Q_EMIT noScheduleWanted(path); });
    menu.exec(place);
}

void FieldBlock::showOriginMenu(const std::string& path, const QPoint& place) {
    QMenu menu(this);
    QAction* own =
        menu.addAction(tr("This value is my &choice"), this, [&] { Q_EMIT ownChoiceWanted(path); });
    own->setEnabled(!cells_.at(path).mark->text().isEmpty());
    menu.addAction(tr("&Origin and range…"), this, [&] { Q_EMIT originWanted(path); });
    menu.exec(place);
}

bool FieldBlock::filter(const QString& text, bool wholeChapter, const std::set<std::string>* only) {
    bool any = false;
    const bool isPlain = text.isEmpty() && !only;
    for (auto& [path, cell] : cells_) {
        const bool isFound =
            isPlain ? !folded_.contains(path)
                    : text.isEmpty() || wholeChapter || matches(cell.editor->field(), text);
        const bool shown = isFound && (!only || only->contains(path));
        showCell(cell, shown);
        any = any || shown;
    }
    if (more_)
        more_->setVisible(isPlain && !folded_.empty());
    setVisible(any);
    return any;
}

std::pair<Match, FieldEditor*> FieldBlock::best(const QString& text) const {
    std::pair<Match, FieldEditor*> found{Match::none, nullptr};
    for (const std::string& path : order_) {
        FieldEditor* editor = cells_.at(path).editor;
        if (editor->isHidden())
            continue;
        const Match match =
            std::max(Match::elsewhere, matchOf(coreText(editor->field().label), text.trimmed()));
        if (match > found.first)
            found = {match, editor};
    }
    return found;
}

bool FieldBlock::isMovingSegment() const {
    const auto kind = cells_.find(list_ + '/' + std::to_string(row_) + "/kind");
    if (kind == cells_.end())
        return false;
    const auto* value = std::get_if<std::string>(&kind->second.editor->field().value);
    return value && *value != "dwell";
}

void FieldBlock::addSegmentActions(QMenu& menu) {
    const bool moves = isMovingSegment();
    QAction* split = menu.addAction(
        moves ? tr("&Split into two moves with a stop between") : tr("&Split in two"), this,
        [this] { Q_EMIT rowChangeWanted(list_, row_, RowChange::split); });
    if (!moves)
        return;
    split->setToolTip(tr("Every law starts and ends at rest, so the two halves meet at a stop "
                         "halfway: accelerations about double. Knots keep the curve as it is."));
    const End end = list_.find("/exhaust/") == std::string::npos ? End::inlet : End::exhaust;
    QAction* knots = menu.addAction(tr("Turn the track into &knots, which keep the curve…"), this,
                                    [this, end] { Q_EMIT knotsWanted(end); });
    knots->setToolTip(tr("Then points can be added anywhere on the curve without a stop"));
}

void FieldBlock::showRowMenu() {
    QMenu menu(this);
    menu.setToolTipsVisible(true);
    const auto add = [&](const QString& text, RowChange change) {
        menu.addAction(text, this, [this, change] { Q_EMIT rowChangeWanted(list_, row_, change); });
    };
    if (list_.ends_with("/segments")) {
        addSegmentActions(menu);
        add(tr("Add &dwell after it"), RowChange::addDwell);
    } else {
        add(tr("&Add another after it"), RowChange::addBelow);
    }
    add(list_ == group_ ? tr("&Remove the last") : tr("&Remove"), RowChange::remove);
    if (list_ != group_ && !list_.ends_with("/knots") && !list_.ends_with("/harmonics")) {
        menu.addSeparator();
        add(tr("Move &up"), RowChange::moveUp);
        add(tr("Move dow&n"), RowChange::moveDown);
    }
    menu.exec(rowMenu_->mapToGlobal(QPoint(0, rowMenu_->height())));
}

std::vector<QWidget*> FieldBlock::inOrder() const {
    std::map<std::pair<int, int>, QWidget*> places;
    for (int i = 0; i < grid_->count(); ++i) {
        int row = 0, column = 0, rows = 0, columns = 0;
        grid_->getItemPosition(i, &row, &column, &rows, &columns);
        if (QWidget* widget = grid_->itemAt(i)->widget())
            places[{row, column}] = widget;
    }
    std::vector<QWidget*> ordered;
    for (const auto& [place, widget] : places)
        ordered.push_back(widget);
    return ordered;
}

} // namespace lobewright::ui
