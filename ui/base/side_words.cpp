#include "ui/base/side_words.h"

#include <QCoreApplication>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(SideWords)
};

} // namespace

QString trackTitle(End end, bool isOnly) {
    return isOnly              ? Words::tr("Track")
           : end == End::inlet ? Words::tr("Inlet track")
                               : Words::tr("Exhaust track");
}

QString trackWithin(End end, bool isOnly) {
    return isOnly              ? Words::tr("track")
           : end == End::inlet ? Words::tr("inlet track")
                               : Words::tr("exhaust track");
}

QString pistonTitle(End end, bool isOnly) {
    return isOnly              ? Words::tr("Piston")
           : end == End::inlet ? Words::tr("Inlet piston")
                               : Words::tr("Exhaust piston");
}

} // namespace lobewright::ui
