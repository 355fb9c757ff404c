#pragma once

#include "ui/base/shown.h"
#include "ui/editing/edit.h"

#include <QWidget>

#include <string>

class QDoubleSpinBox;
class QLabel;
class QSlider;
class QTableWidget;

namespace lobewright::ui {

/// Sliders for turning and moving the exhaust track by the adjuster, with what that does to
/// compression, port events and overlap, split into the share of turning and of moving.
class AdjusterPanel : public QWidget {
    Q_OBJECT

  public:
    explicit AdjusterPanel(QWidget* parent = nullptr);

    void showGeometry(const GeometryPointer& geometry);
    void showSolution(const SolutionPointer& solution);
    void showBaseline(const SolutionPointer& baseline);

  Q_SIGNALS:
    void edited(const lobewright::ui::Edit& edit);
    void editFinished();

  private:
    struct Control {
        std::string path;
        QString step; ///< name of the undo step
        QString unit; ///< of the design file
        QSlider* slider = nullptr;
        QDoubleSpinBox* box = nullptr;
        QLabel* name = nullptr;
    };
    void showSides(bool isOneSided);
    Control makeControl(const std::string& path, const QString& label, const QString& unit,
                        double reach, const QString& step);
    /// Range, digits and unit of the box in the units shown now.
    static void scaleBox(const Control& control);
    /// `value` in the unit of the design file.
    void ask(const Control& control, double value);
    void showDesign(const design::Design& design);
    void fillTable();

    design::Design design_;
    bool hasDesign_ = false;
    bool showing_ = false; ///< values come from the design, not from the hand
    SolutionPointer solution_, baseline_;
    Control setting_, axial_;
    QLabel *refusal_, *total_;
    QTableWidget* table_;
};

} // namespace lobewright::ui
