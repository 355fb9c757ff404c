#include "ui/base/faults.h"

namespace lobewright::ui {

Faults& Faults::instance() {
    static Faults faults;
    return faults;
}

void Faults::note(const Problem& fault) {
    QMetaObject::invokeMethod(
        qApp, [fault] { Q_EMIT instance().happened(fault); }, Qt::QueuedConnection);
}

bool GuardedApplication::notify(QObject* receiver, QEvent* event) {
    try {
        return QApplication::notify(receiver, event);
    } catch (...) {
        Faults::instance().note(faultOf(std::current_exception()));
        return false;
    }
}

} // namespace lobewright::ui
