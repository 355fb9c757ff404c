#include "ui/panels/number_chapter.h"

#include "ui/base/layouts.h"
#include "ui/base/type_scale.h"
#include "ui/panels/field_block.h"

#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace lobewright::ui {

NumberChapter::NumberChapter(const Chapter& chapter, QWidget* parent)
    : QWidget(parent), about_(chapter), heading_(new QToolButton(this)), body_(new QWidget(this)),
      column_(new QVBoxLayout(body_)) {
    heading_->setText(chapter.title);
    heading_->setToolTip(chapter.hint);
    heading_->setCheckable(true);
    heading_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    heading_->setAutoRaise(true);
    heading_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    heading_->setFont(inBold(heading_->font()));
    column_->setContentsMargins(8, 0, 4, 4);
    column_->setSpacing(0);
    columnOf(this, {0, 0, 0, 0}, 0, {heading_, body_});
    connect(heading_, &QToolButton::clicked, this, &NumberChapter::setOpen);
}

void NumberChapter::addAbove(QWidget* widget) {
    widget->setParent(body_);
    column_->addWidget(widget);
}

bool NumberChapter::isOpen() const {
    return heading_->isChecked();
}

void NumberChapter::setOpen(bool open) {
    Q_EMIT folding();
    heading_->setChecked(open);
    heading_->setArrowType(open ? Qt::DownArrow : Qt::RightArrow);
    body_->setVisible(open && isThere_);
}

void NumberChapter::nameFor(const design::Design& design) {
    heading_->setText(about_.titleOf(design));
    heading_->setToolTip(about_.hintOf(design));
}

void NumberChapter::setThere(bool isThere) {
    isThere_ = isThere;
    heading_->setVisible(isThere);
    body_->setVisible(isThere && isOpen());
}

bool NumberChapter::showFields(const Groups& groups) {
    size_t kept = 0;
    while (kept < groups.size() && kept < shown_.size() && shown_[kept]->holds(groups[kept])) {
        shown_[kept]->show(groups[kept]);
        ++kept;
    }
    for (size_t i = kept; i < shown_.size(); ++i) {
        shown_[i]->hide();
        shown_[i]->deleteLater(); // one of them may be in the middle of asking for this
    }
    shown_.resize(kept);
    for (size_t i = kept; i < groups.size(); ++i) {
        // The section that gives a chapter its name needs no heading of its own.
        const std::string& group = groups[i].front().group;
        const bool plain = std::ranges::any_of(chapters(), [&](const Chapter& chapter) {
            return !chapter.groups.empty() &&
                   (chapter.groups.front() == group || chapter.groups.front() == '=' + group);
        });
        auto* block = new FieldBlock(groups[i],
                                     !plain && group != "/tracks/exhaust" && !group.empty(), body_);
        shown_.push_back(block);
        column_->addWidget(block);
        Q_EMIT blockMade(block);
    }
    return kept < groups.size();
}

std::vector<QWidget*> NumberChapter::inOrder() const {
    std::vector<QWidget*> parts{heading_};
    for (int i = 0; i < column_->count(); ++i) {
        if (QWidget* part = column_->itemAt(i)->widget())
            parts.push_back(part);
    }
    return parts;
}

bool NumberChapter::filter(const QString& text, const std::set<std::string>* only) {
    const bool isPlain = text.isEmpty() && !only;
    const bool titleHas = !text.isEmpty() && heading_->text().contains(text, Qt::CaseInsensitive);
    bool any = titleHas && !only;
    for (FieldBlock* block : shown_)
        any = block->filter(text, titleHas, only) || any;
    heading_->setVisible(isThere_ && (isPlain || any));
    body_->setVisible(isThere_ && (isPlain ? isOpen() : any));
    return isThere_ && any;
}

bool NumberChapter::isFound() const {
    return !body_->isHidden();
}

} // namespace lobewright::ui
