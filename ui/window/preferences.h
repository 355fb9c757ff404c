#pragma once

#include "ui/base/look.h"
#include "ui/base/units.h"

#include <QDialog>

class QCheckBox;
class QComboBox;
class QSpinBox;

namespace lobewright::ui {

/// What a person sets once for the program, kept between runs.
struct Preferences {
    UnitSystem units = UnitSystem::metric;
    Theme theme = Theme::system;
    int textSize = 100;        ///< of the system's text size [%]
    int autosaveInterval = 10; ///< [s]
    int slowMotion = 0;        ///< 1 : n of the shaft speed; 0: suited to the design
    int threads = 0;           ///< that studies may use; 0: all that the machine has
    QString language;          ///< "en", "de"; empty: as the system
    bool restoresLayout = true;
    bool opensLast = false; ///< start with the design of last time; else with the first sample

    bool operator==(const Preferences&) const = default;

    static Preferences load();
    void save() const;
};

/// What concerns the whole program and not one window: units, look, text size, threads.
void applyToProgram(const Preferences& preferences);

/// Every change is kept and announced at once; there is nothing to confirm.
class PreferencesDialog : public QDialog {
    Q_OBJECT

  public:
    explicit PreferencesDialog(QWidget* parent = nullptr);

  Q_SIGNALS:
    void changed(const lobewright::ui::Preferences& preferences);

  private:
    void build();
    QComboBox* addChoice(const char* name, const QString& label, const QString& help,
                         const QList<std::pair<QString, QVariant>>& choices);
    void show(const Preferences& preferences);
    using QDialog::show;
    void take();

    QComboBox *units_ = nullptr, *theme_ = nullptr, *textSize_ = nullptr, *slowMotion_ = nullptr,
              *language_ = nullptr;
    QSpinBox *autosave_ = nullptr, *threads_ = nullptr;
    QCheckBox *layout_ = nullptr, *last_ = nullptr;
    bool showing_ = false;
};

} // namespace lobewright::ui
