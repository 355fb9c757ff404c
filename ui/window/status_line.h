#pragma once

#include <QObject>

class QLabel;
class QWidget;

namespace lobewright::ui {

class ElidedButton;
class FiguresBar;
class LimitsList;
struct Session;

/// The foot of the window: figures, baseline, limits, how far solving is, and the cautions, which
/// stand there in every view.
class StatusLine : public QObject {
    Q_OBJECT

  public:
    /// `results`: what is marked as long as it is of an earlier input.
    StatusLine(Session& session, QWidget& results);

    FiguresBar& figures() const { return *figures_; }
    /// Shown while no copies for recovery can be kept.
    QLabel& recoveryState() const { return *recovery_; }
    /// How many limits are broken.
    void showLimits(const LimitsList& limits);

  Q_SIGNALS:
    void limitsWanted();
    void cautionsWanted();

  private:
    QWidget* baselineName(Session& session);
    QWidget* cautionButton(Session& session);

    FiguresBar* figures_;
    QLabel* recovery_;
    ElidedButton* limits_;
};

} // namespace lobewright::ui
