#pragma once

#include "ui/panels/chapters.h"

#include <QWidget>

#include <set>
#include <string>
#include <vector>

class QToolButton;
class QVBoxLayout;

namespace lobewright::ui {

class FieldBlock;

/// A chapter of the number panel: a heading that folds it, and blocks of fields.
class NumberChapter : public QWidget {
    Q_OBJECT

  public:
    using Groups = std::vector<std::vector<design::Field>>;

    NumberChapter(const Chapter& chapter, QWidget* parent);

    const QString& key() const { return about_.key; }
    /// True: blocks were made for these fields, each announced by blockMade().
    bool showFields(const Groups& groups);
    const std::vector<FieldBlock*>& blocks() const { return shown_; }
    /// Puts a widget above the blocks.
    void addAbove(QWidget* widget);
    /// Heading and what stands below it, in the order of the tabulator.
    std::vector<QWidget*> inOrder() const;

    bool isOpen() const;
    void setOpen(bool open);
    /// Says title and hint as they are for an engine with one track or two.
    void nameFor(const design::Design& design);
    /// False: the design has nothing that belongs here.
    void setThere(bool isThere);
    /// Shows only fields that the text names or explains, of these paths (null: of all); all of
    /// them where neither is given. True when any is left.
    bool filter(const QString& text, const std::set<std::string>* only);
    bool isFound() const; ///< something of it can be seen

  Q_SIGNALS:
    void blockMade(lobewright::ui::FieldBlock* block);
    void folding();

  private:
    const Chapter& about_;
    QToolButton* heading_;
    QWidget* body_;
    QVBoxLayout* column_;
    std::vector<FieldBlock*> shown_;
    bool isThere_ = true;
};

} // namespace lobewright::ui
