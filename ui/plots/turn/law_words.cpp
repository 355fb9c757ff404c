#include "ui/plots/turn/law_words.h"

#include <QCoreApplication>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Laws)
};

} // namespace

QString lawWords(motion::Law law) {
    switch (law) {
    case motion::Law::harmonic:
        return Words::tr("Harmonic");
    case motion::Law::cycloidal:
        return Words::tr("Cycloidal");
    case motion::Law::parabolic:
        return Words::tr("Parabolic");
    case motion::Law::modifiedTrapezoid:
        return Words::tr("Modified trapezoid");
    case motion::Law::modifiedSine:
        return Words::tr("Modified sine");
    case motion::Law::polynomial345:
        return Words::tr("Polynomial 3-4-5");
    case motion::Law::polynomial4567:
        return Words::tr("Polynomial 4-5-6-7");
    }
    return {};
}

} // namespace lobewright::ui
