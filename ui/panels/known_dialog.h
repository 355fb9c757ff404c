#pragma once

#include "core/design/fields.h"
#include "core/design/knowledge.h"

#include <QDialog>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace lobewright::ui {

/// Origin, range and source of one input.
class KnownDialog : public QDialog {
    Q_OBJECT

  public:
    KnownDialog(const design::Design& design, const design::Field& field, QWidget* parent);

    /// The knowledge of the design with what the person entered for this input.
    design::Knowledge knowledge() const;

  private:
    void addRange(QFormLayout& form);
    void addOptions(QFormLayout& form);
    design::Known entered() const;
    void check();

    const design::Design& design_;
    design::Field field_;
    design::Known before_;
    QComboBox *origin_ = nullptr, *spread_ = nullptr;
    QLineEdit *low_ = nullptr, *high_ = nullptr, *group_ = nullptr, *source_ = nullptr;
    QListWidget* options_ = nullptr;
    QLabel* problem_ = nullptr;
    QPushButton* accept_ = nullptr;
};

} // namespace lobewright::ui
