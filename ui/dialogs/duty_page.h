#pragma once

#include "core/draft/brief.h"

#include <QWidget>

#include <map>
#include <optional>

class QComboBox;
class QLabel;
class QLineEdit;

namespace lobewright::ui {

/// A duty to be filled in: what the engine shall do, and within which limits.
class DutyPage : public QWidget {
    Q_OBJECT

  public:
    explicit DutyPage(QWidget* parent = nullptr);

    /// "power" to "12 kW"; "fuel" to a key of the design file.
    void setLine(const QString& key, const QString& value);
    /// Nothing: neither power nor torque, or what cannot be read (then the page says so).
    std::optional<draft::Brief> brief();

  Q_SIGNALS:
    void changed();

  private:
    std::map<QString, QLineEdit*> lines_;
    QComboBox* fuel_;
    QLabel* problem_;
};

} // namespace lobewright::ui
