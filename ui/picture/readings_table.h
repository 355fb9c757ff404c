#pragma once

#include "core/design/fields.h"
#include "ui/editing/edit.h"
#include "ui/picture/picture_marks.h"

#include <QWidget>

class QTableWidget;

namespace lobewright::ui {

/// The readings of a picture with their ranges, and which input each goes to.
class ReadingsTable : public QWidget {
    Q_OBJECT

  public:
    explicit ReadingsTable(QWidget* parent = nullptr);

    void setDesign(const design::Design& design);
    void show(const PictureMarks& marks);

  Q_SIGNALS:
    /// The marks as they shall be: another input chosen, or a reading removed.
    void wanted(const lobewright::ui::PictureMarks& marks);
    /// A traced lobe shall become this track.
    void lobeWanted(int reading, lobewright::End end);

  private:
    void addRow(int row);
    QWidget* inputChooser(int row);
    void remove();

    design::Design design_;
    std::vector<design::Field> lengths_, angles_; ///< inputs that a reading may go to
    PictureMarks marks_;
    QTableWidget* table_;
};

/// What the readings make of the design: each input that one or more go to, with origin *measured*
/// and its range. `source`: the name of the picture.
Edit measuredEdit(const design::Design& design, const PictureMarks& marks, const QString& source);

} // namespace lobewright::ui
