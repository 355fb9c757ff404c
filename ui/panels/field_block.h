#pragma once

#include "core/design/fields.h"
#include "core/design/knowledge.h"
#include "core/editing/design_edits.h"

#include <QWidget>

#include <map>
#include <set>
#include <vector>

class QGridLayout;
class QLabel;
class QMenu;
class QToolButton;

namespace lobewright::ui {

using editing::RowChange;

class FieldEditor;

/// How well a text that is looked for names something; better ones are greater.
enum class Match { none, elsewhere, within, atTheBeginning, exactly };
/// By the name itself, ignoring case.
Match matchOf(const QString& name, const QString& text);

/// The fields of one section of the design file, or of one row of a list, under a heading.
/// Rows of lists get a button with what can be done to them.
class FieldBlock : public QWidget {
    Q_OBJECT

  public:
    /// All fields share the group; at least one.
    FieldBlock(std::vector<design::Field> fields, bool withHeading, QWidget* parent);

    const std::string& group() const { return group_; }
    /// Whether these fields stand here already, so that show() is enough.
    bool holds(const std::vector<design::Field>& fields) const;
    /// What stands in it, row by row.
    std::vector<QWidget*> inOrder() const;
    void show(const std::vector<design::Field>& fields);

    FieldEditor* editor(const std::string& path) const;
    /// The widget that a message about this field belongs under; without such a field the
    /// heading, for messages about the row as a whole.
    QWidget* anchor(const std::string& path) const;
    /// Shows only fields that have the text in label, help or path; true when any is left.
    /// `only`: of these paths; null: of all.
    bool filter(const QString& text, bool wholeChapter, const std::set<std::string>* only);
    /// Shows an input of these fields that is folded away.
    void unfold(const std::string& path);
    /// Marks the inputs that are not chosen with a letter for their origin.
    void showOrigins(const design::Design& design);
    /// Marks the inputs that follow the speed; their values are those at the design's.
    void showSchedules(const design::Design& design);
    /// The field shown that the text names best, the first of equals; `elsewhere` where the text is
    /// not in its name.
    std::pair<Match, FieldEditor*> best(const QString& text) const;

  Q_SIGNALS:
    void wanted(const std::string& path, const lobewright::design::FieldValue& value);
    void stepped(const std::string& path, const lobewright::design::FieldValue& value);
    void stepsDone();
    void unreadable(const std::string& path, const QString& text);
    void touched();
    /// The person wants to see and change the origin and range of this input.
    void originWanted(const std::string& path);
    /// The person says that the value of this input is a choice of his own.
    void ownChoiceWanted(const std::string& path);
    /// The person wants to see the schedule of this input, or none of it any more.
    void scheduleWanted(const std::string& path);
    void noScheduleWanted(const std::string& path);
    void rowChangeWanted(const std::string& list, int row, lobewright::ui::RowChange change);
    /// The track that this row belongs to, as knots that keep its curve.
    void knotsWanted(lobewright::End end);

  private:
    struct Cell {
        FieldEditor* editor;
        QLabel* caption;
        QToolButton* mark;    ///< of its origin; hidden where it is chosen
        QToolButton* follows; ///< hidden where it stands still
    };
    void addHeading();
    static void showCell(const Cell& cell, bool shown);
    void foldUnused(const std::vector<design::Field>& fields);
    void showFolded();
    void addLine(const design::Field& field);
    void addCompact(const design::Field& field);
    Cell makeCell(const design::Field& field);
    void showOriginMenu(const std::string& path, const QPoint& place);
    void showScheduleMenu(const std::string& path, const QPoint& place);
    QToolButton* addMark(FieldEditor& editor, const char* name, const QString& letters);
    void showRowMenu();
    void addSegmentActions(QMenu& menu);
    bool isMovingSegment() const;

    std::string group_;
    std::string list_; ///< path of the list when this is one of its rows
    int row_ = -1;
    QGridLayout* grid_;
    QLabel* heading_ = nullptr;
    QToolButton* rowMenu_ = nullptr;
    std::map<std::string, Cell> cells_;
    std::vector<std::string> order_;
    int line_ = 0, column_ = 0;
    std::set<std::string> folded_; ///< rows of features that the design does not use
    QToolButton* more_ = nullptr;  ///< unfolds them
};

} // namespace lobewright::ui
