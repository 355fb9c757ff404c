#pragma once

#include "core/draft/brief.h"

#include <QWidget>

#include <optional>

class QLabel;

namespace lobewright::ui {

class ClaimsForm;

/// The figures of a published sheet to be filled in; says which of them exclude each other.
class PublishedPage : public QWidget {
    Q_OBJECT

  public:
    explicit PublishedPage(QWidget* parent = nullptr);

    void setClaims(const study::Claims& claims);
    const study::Claims& claims() const;
    /// Nothing: no figure is given yet.
    std::optional<draft::Brief> brief() const;

  Q_SIGNALS:
    void changed();

  private:
    void showConflicts();

    ClaimsForm* form_;
    QLabel* conflicts_;
};

} // namespace lobewright::ui
