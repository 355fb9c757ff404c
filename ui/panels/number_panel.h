#pragma once

#include "core/design/fields.h"
#include "core/editing/design_edits.h"
#include "core/result.h"
#include "ui/editing/edit.h"

#include <QWidget>

#include <optional>
#include <set>
#include <vector>

class QLabel;
class QLineEdit;
class QScrollArea;
class QToolButton;
class QVBoxLayout;

namespace lobewright::ui {

class FieldBlock;
class FieldNote;
class NumberChapter;
class TrackShapeChoice;

/// Every number of the design, in chapters with plain names, found by a search line.
/// Built from the catalogue of fields: a key that the design file gets appears here by itself.
class NumberPanel : public QWidget {
    Q_OBJECT

  public:
    explicit NumberPanel(QWidget* parent = nullptr);

    void show(const design::Design& design);
    using QWidget::show;
    /// The rules that the edit asked for last has broken, shown under its field until the next
    /// edit; none: nothing changes.
    void showProblems(const Problems& problems);
    /// Opens the chapter of a field, scrolls to it and puts the keyboard there.
    void goTo(const QString& path);
    void focusSearch();
    /// Origin and range of the input that has the keyboard; false: none has it.
    bool editOriginHere();

    QStringList openChapters() const;
    void setOpenChapters(const QStringList& keys);

  Q_SIGNALS:
    void edited(const lobewright::ui::Edit& edit);
    void editFinished();
    /// The person wants a track turned into knots and to see what that costs.
    void knotsWanted(lobewright::End end);
    /// No input has this name: the help may know.
    void helpWanted(const QString& words);
    /// The person wants to see the schedule of an input that follows the speed.
    void scheduleWanted(const QString& input);

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void buildChapters(QVBoxLayout* layout);
    void addShapeChoice(NumberChapter& chapter, End end);
    void connectBlock(FieldBlock* block);
    void chainFocus();
    void showShapes();
    void ask(const std::string& path, const design::FieldValue& value, bool step);
    void askRowChange(const std::string& list, int row, editing::RowChange change);
    void clearProblem();
    void search(const QString& text);
    void showOrigins();
    void showSchedules();
    void askOrigin(const std::string& path);
    void takeOwnChoice(const std::string& path);
    void removeSchedule(const std::string& path);
    std::optional<std::set<std::string>> shownPaths() const;
    /// What the text looked for names best, the first of equals; null: nothing.
    QWidget* bestFound() const;
    FieldBlock* blockOf(const std::string& path) const;

    QLineEdit* search_;
    QLabel* origins_;                           ///< how many inputs are given, measured, …
    std::optional<design::Origin> shownOrigin_; ///< only inputs of this origin
    QLabel* nothing_;                           ///< says that nothing was found
    QToolButton* helpSearch_;                   ///< and where else it may be
    QScrollArea* scroll_;
    std::vector<NumberChapter*> chapters_;
    struct Shape {
        NumberChapter* chapter = nullptr;
        TrackShapeChoice* choice = nullptr;
    };
    PerEnd<Shape> shapes_; ///< how the tracks are described
    design::Design design_;
    std::string asked_; ///< path of the field edited last
    FieldNote* note_;
};

} // namespace lobewright::ui
