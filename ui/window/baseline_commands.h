#pragma once

#include <QObject>

class QMenu;

namespace lobewright::ui {

struct Session;

/// What can be done with the baseline, the design that the present one is compared with.
class BaselineCommands : public QObject {
    Q_OBJECT

  public:
    explicit BaselineCommands(Session& session);

    /// The present design; as soon as it is solved.
    void keep();
    void addTo(QMenu& menu);

  private:
    void openFile();
    void exchange();

    Session& session_;
    bool isWanted_ = false; ///< keep the next settled solution
};

} // namespace lobewright::ui
