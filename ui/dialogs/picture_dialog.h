#pragma once

#include "ui/picture/picture_marks.h"

#include <QDialog>

class QLabel;
class QPushButton;
class QSpinBox;
class QToolButton;

namespace lobewright::ui {

class Document;
class NumberEdit;
class PictureView;
class ReadingsTable;

/// Measures a picture or a page of a PDF and puts what it read into inputs of the design, as one
/// undo step. The picture is not kept in the design; its name is.
class PictureDialog : public QDialog {
    Q_OBJECT

  public:
    explicit PictureDialog(Document& document, QWidget* parent = nullptr);

    /// False when the file cannot be read, which is then said.
    bool openPicture(const QString& file, int page = 0);
    PictureView& view() { return *view_; }
    /// What the places of the scale are apart [mm].
    void setScaleLength(std::optional<double> shown);

  protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    QWidget* buildHead();
    QWidget* buildTools();
    QWidget* buildReadings();
    void askForPicture();
    void choose(PictureTool tool);
    void showMarks();
    void importLobe(int reading, End end);
    void apply();
    void say(const QString& text, bool isProblem = false);

    Document& document_;
    QString file_;
    PictureView* view_ = nullptr;
    ReadingsTable* readings_ = nullptr;
    QLabel *name_ = nullptr, *message_ = nullptr;
    QSpinBox* page_ = nullptr;
    NumberEdit* length_ = nullptr;
    std::vector<QToolButton*> tools_;
    QToolButton *undo_ = nullptr, *redo_ = nullptr;
    QPushButton* apply_ = nullptr;
};

} // namespace lobewright::ui
