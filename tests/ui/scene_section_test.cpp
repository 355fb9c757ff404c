#include "core/units.h"
#include "tests/ui/scene_fixture.h"
#include "ui/scene/section_view.h"

#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace lobewright::ui::test {
namespace {

TEST(SectionPictures, AreKept) {
    TurnCursor cursor;
    for (const bool dark : {false, true})
        for (const QSize size : {QSize(380, 250), QSize(700, 420), QSize(1300, 620)}) {
            SectionView view(cursor);
            useTones(view, dark);
            view.resize(size);
            view.showSolution(inventedSolution(twoLobeDesign()));
            for (const double angle : {0.0, 40.0, 100.0, 175.0}) {
                cursor.setAngle(angle * units::degree);
                keepPicture(view, QStringLiteral("section-%1-%2-%3")
                                      .arg(size.width())
                                      .arg(dark ? "dark" : "light")
                                      .arg(angle));
            }
        }
}

} // namespace
} // namespace lobewright::ui::test
