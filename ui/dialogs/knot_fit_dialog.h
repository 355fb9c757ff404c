#pragma once

#include "core/ends.h"
#include "core/motion/knot_fit.h"

#include <QDialog>

#include <optional>

class QComboBox;
class QDoubleSpinBox;
class QFormLayout;
class QLabel;
class QPushButton;
class QSpinBox;

namespace lobewright::ui {

class Document;
class KnotFitPlot;

/// Turns a track of any description into knots to be pulled by hand, by tolerance or by number,
/// and shows what is lost before the design is changed.
class KnotFitDialog : public QDialog {
    Q_OBJECT

  public:
    KnotFitDialog(Document& document, End end, QWidget* parent = nullptr);

    /// Of the present settings.
    const std::optional<motion::KnotFit>& fit() const { return fit_; }

  private:
    enum class Choice { tolerance, count };

    QFormLayout* buildForm(End end);
    End end() const;
    void choiceChanged();
    void refit();
    void showFit(const motion::LiftCurve& curve);
    void useFit();
    void say(const QString& text, bool isWarning);

    Document& document_;
    std::optional<motion::KnotFit> fit_;
    QComboBox *track_ = nullptr, *choice_ = nullptr;
    QDoubleSpinBox* tolerance_ = nullptr;
    QSpinBox* count_ = nullptr;
    KnotFitPlot* plot_ = nullptr;
    QLabel* message_ = nullptr;
    QPushButton* use_ = nullptr;
};

} // namespace lobewright::ui
