#pragma once

#include "core/fault.h"

#include <QApplication>
#include <QObject>

namespace lobewright::ui {

/// The mistakes of the program itself: exceptions that reached a barrier. The window listens, keeps
/// the design and says so.
class Faults : public QObject {
    Q_OBJECT

  public:
    static Faults& instance();
    /// From any thread.
    void note(const Problem& fault);

  Q_SIGNALS:
    /// On the thread of the window.
    void happened(const lobewright::Problem& fault);
};

/// The barrier of every thread of the desktop: as guarded() of the core, and noted.
template <class Work>
auto guardedWork(const Work& work) -> std::invoke_result_t<const Work&> {
    return guarded([&work] {
        try {
            return work();
        } catch (...) {
            Faults::instance().note(faultOf(std::current_exception()));
            throw;
        }
    });
}

/// The barrier of the thread of the window: an exception ends the handling of one event.
class GuardedApplication : public QApplication {
    Q_OBJECT

  public:
    using QApplication::QApplication;
    bool notify(QObject* receiver, QEvent* event) override;
};

} // namespace lobewright::ui
