// Random hands on the scene: nothing may crash, and every edit has to name a field of the design.
#include "core/design/fields.h"
#include "core/design/file.h"
#include "tests/ui/scene_fixture.h"
#include "ui/scene/section/cylinder_circle.h"
#include "ui/scene/section/section_view.h"
#include "ui/scene/tracks/liner_map.h"
#include "ui/scene/tracks/unrolled_tracks.h"

#include <QApplication>
#include <QTest>
#include <gtest/gtest.h>

#include <random>

namespace lobewright::ui::test {
namespace {

/// A document that refuses what cannot stand, as the real one does.
class Refusing : public QObject {
  public:
    Refusing(TurnView& view, const design::Design& start) : design_(start) {
        view.showGeometry(geometryOf(design_));
        connect(&view, &TurnView::edited, this, [this, &view](const Edit& edit) {
            EXPECT_TRUE(!edit.changes.empty() || edit.replacement) << edit.text.toStdString();
            EXPECT_FALSE(edit.text.isEmpty());
            design::Design changed = edit.replacement.value_or(design_);
            for (const auto& change : edit.changes) {
                EXPECT_TRUE(design::findField(design_, change.path)) << change.path;
                const auto next = design::withField(changed, change.path, change.value);
                if (!next)
                    return;
                changed = *next;
            }
            if (!design::validate(changed).empty())
                return;
            design_ = changed;
            ++accepted_;
            view.showGeometry(geometryOf(design_));
        });
        connect(&view, &TurnView::editFinished, this, [this] { ++finished_; });
    }
    int accepted() const { return accepted_; }
    int finished() const { return finished_; }

  private:
    design::Design design_;
    int accepted_ = 0, finished_ = 0;
};

class Monkey : public ::testing::TestWithParam<const char*> {
  protected:
    void actOn(TurnView& view, unsigned seed) {
        std::mt19937 random(seed);
        const auto upTo = [&random](int most) {
            return static_cast<int>(std::uniform_int_distribution<>(0, most)(random));
        };
        const Qt::Key keys[] = {Qt::Key_Left,   Qt::Key_Right,    Qt::Key_Up,   Qt::Key_Down,
                                Qt::Key_Tab,    Qt::Key_Backtab,  Qt::Key_Home, Qt::Key_Escape,
                                Qt::Key_PageUp, Qt::Key_PageDown, Qt::Key_2};
        for (int i = 0; i < 400; ++i) {
            const auto shift = upTo(3) == 0 ? Qt::ShiftModifier : Qt::NoModifier;
            const QPointF somewhere(upTo(view.width()), upTo(view.height()));
            switch (upTo(5)) {
            case 0:
            case 1:
                if (!view.handles().empty()) {
                    const auto count = static_cast<int>(view.handles().size());
                    const QPointF at = view.handles()[static_cast<std::size_t>(upTo(count - 1))].at;
                    dragMouse(view, at, upTo(4) ? at + 0.2 * (somewhere - at) : somewhere, shift);
                }
                break;
            case 2:
                dragMouse(view, somewhere, somewhere + QPointF(upTo(80) - 40, upTo(80) - 40),
                          shift);
                break;
            case 3:
                view.resize(240 + upTo(900), 160 + upTo(500));
                break;
            default:
                QTest::keyClick(&view, keys[upTo(static_cast<int>(std::size(keys)) - 1)], shift);
            }
            if (i % 10 == 0) {
                EXPECT_FALSE(view.grab().isNull());
            }
        }
    }
};

TEST_P(Monkey, NeitherCrashesNorAsksForUnknownFields) {
    const auto design = solvedSample(GetParam())->design;
    TurnCursor cursor;
    SectionView section(cursor);
    UnrolledTracks tracks(cursor);
    CylinderCircle circle(cursor);
    LinerMap liner(cursor);
    unsigned seed = 7;
    int accepted = 0;
    for (TurnView* view : std::initializer_list<TurnView*>{&section, &tracks, &circle, &liner}) {
        const Refusing document(*view, design);
        view->resize(700, 420);
        view->show();
        actOn(*view, seed++);
        accepted += document.accepted();
        EXPECT_GE(cursor.angle(), 0.0);
        EXPECT_LT(cursor.angle(), 6.2831853072);
        view->hide();
    }
    EXPECT_GT(accepted, 50);
}

INSTANTIATE_TEST_SUITE_P(Samples, Monkey,
                         ::testing::Values("biogas-pump-set", "sketched-lobes-blown",
                                           "unequal-lobes"),
                         [](const auto& sample) {
                             std::string name = sample.param;
                             std::replace(name.begin(), name.end(), '-', '_');
                             return name;
                         });

} // namespace
} // namespace lobewright::ui::test
