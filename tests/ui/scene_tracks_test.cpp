#include "core/units.h"
#include "tests/ui/scene_fixture.h"
#include "ui/scene/unrolled_tracks.h"

#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace lobewright::ui::test {
namespace {

TEST(TrackPictures, AreKept) {
    TurnCursor cursor;
    for (const bool dark : {false, true})
        for (const QSize size : {QSize(380, 250), QSize(700, 420), QSize(1300, 620)}) {
            UnrolledTracks view(cursor);
            useTones(view, dark);
            view.resize(size);
            view.showSolution(inventedSolution(twoLobeDesign()));
            cursor.setAngle(40.0 * units::degree);
            keepPicture(
                view,
                QStringLiteral("tracks-%1-%2").arg(size.width()).arg(dark ? "dark" : "light"));
        }
}

} // namespace
} // namespace lobewright::ui::test
