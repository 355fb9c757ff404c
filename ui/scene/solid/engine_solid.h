#pragma once

#include "ui/plots/base/turn_cursor.h"
#include "ui/scene/base/part_names.h"
#include "ui/scene/base/rolled_path.h"
#include "ui/scene/base/shown_engine.h"
#include "ui/scene/solid/placed_names.h"
#include "ui/scene/solid/solid_mesh.h"

#include <QImage>
#include <QMatrix4x4>
#include <QOpenGLBuffer>
#include <QWidget>

#include <functional>
#include <memory>
#include <optional>

class QOffscreenSurface;
class QOpenGLContext;
class QOpenGLFramebufferObject;
class QOpenGLShaderProgram;

namespace lobewright::ui {

/// The whole engine in space: turning tracks, rollers, pistons in opened liners. Drag to orbit,
/// wheel or + and − to come nearer, arrow keys orbit, Home brings the first view back, Space plays.
/// Drawn off the screen and painted as a picture: a widget with a surface of its own would make its
/// window be created anew (a black flash) and every repaint of it pass through OpenGL.
class EngineSolid : public QWidget {
    Q_OBJECT

  public:
    explicit EngineSolid(TurnCursor& cursor, QWidget* parent = nullptr);
    ~EngineSolid() override;

    /// Whether this machine can draw it at all; software rendering is enough.
    static bool isAvailable();

    void showGeometry(const GeometryPointer& geometry);
    void showSolution(const SolutionPointer& solution);
    /// Whose switch says whether parts are named; without one they are.
    void setPartNames(const PartNames& names);
    QSize sizeHint() const override { return {520, 400}; }
    QSize minimumSizeHint() const override { return {240, 160}; }

    /// Where the eye stands: azimuth and height [°], distance as a multiple of what fits.
    struct View {
        float azimuth = -35.0F;
        float height = 22.0F;
        float distance = 1.0F; ///< 1: the engine fills the picture, seen from anywhere
        float apart = 0.0F;    ///< how far the parts stand apart along the shaft, 0 … 1
        bool onRoller = false; ///< turned about the inlet roller of cylinder 1, not the middle
        bool operator==(const View&) const = default;
    };
    const View& view() const { return view_; }
    void setView(const View& view);
    /// The picture as it stands; null where OpenGL fails. While the shaft plays or the view is
    /// dragged it is as coarse as the machine needs to keep up, at rest always full.
    QImage picture();
    /// The names of the parts as they stand beside the picture; none where they are hidden or there
    /// is no room for them.
    std::vector<PlacedName> names() const;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    /// How a surface answers to light.
    struct Finish {
        float shine = 0.25F;
        float evenness = 0.0F; ///< 1: the tone as it is
        float alpha = 1.0F;
    };
    struct Part {
        QOpenGLBuffer buffer{QOpenGLBuffer::VertexBuffer};
        int size = 0;
    };
    /// From where the engine is seen, and what of it then is where: worked out once a picture.
    struct Sight {
        QMatrix4x4 eye;              ///< from the engine to the eye
        QMatrix4x4 screen;           ///< from the engine to the screen
        std::vector<QVector3D> hull; ///< points between which the engine lies
        QStringList words;           ///< for its parts; none where they are not named
    };
    Sight sight() const;
    void changeEngine(const std::function<void()>& change);
    bool makeCurrent();
    bool initialize();
    void drawScene();
    QImage drawn(const QSize& pixels, int samples);
    bool isHurried() const { return cursor_.isPlaying() || isDragged_; }
    void keepUp(double milliseconds);
    bool paintPicture(QPainter& painter); ///< over the paper; false where OpenGL fails
    void paintWords(QPainter& painter, const Sight& sight) const;
    void paintNames(QPainter& painter, const Sight& sight) const;
    void paintTurning(QPainter& painter, const Sight& sight) const;
    std::vector<PlacedName> names(const Sight& sight) const;
    bool areNamed() const { return !names_ || names_->areShown(); }
    QStringList partWords() const;
    std::vector<NamedPart> namedParts(const Sight& sight) const;
    int nearestCylinder() const;
    /// The end behind whose track the eye stands, looking along the shaft: that track is left out.
    std::optional<End> endBeforeEye() const;
    End seenEnd() const;     ///< whose track turns its running surface to the eye
    double shaftEnd() const; ///< z of the end of the shaft that is nearer to the eye [m]
    QMatrix4x4 boreOf(int cylinder) const;
    QRectF room(const QStringList& words) const; ///< for the engine alone, beside names [px]
    QRectF pictureBox(const Sight& sight) const; ///< what the engine covers [px]
    std::vector<QVector3D> hull() const;
    QMatrix4x4 turnedEye() const;
    double crown(End end, double theta) const;
    void load(Part& part, const SolidMesh& mesh);
    void loadParts();
    void loadShaft();
    void release();
    QMatrix4x4 lens() const;
    void draw(Part& part, const QMatrix4x4& place, const QColor& colour, const Finish& finish);
    void paintShadow(QPainter& painter, const Sight& sight) const;
    void drawEnd(const QMatrix4x4& bore, End end, double theta);
    double apart(End end) const; ///< along the shaft, of what stands at an end [m]
    void drawCylinder(int index);
    void drawGlass();
    QMatrix4x4 camera(const std::vector<QVector3D>& hull, const QRectF& room) const;

    TurnCursor& cursor_;
    ShownEngine engine_;
    SolidSizes sizes_; ///< of it
    const PartNames* names_ = nullptr;
    PerEnd<RolledPath> rolled_;
    View view_;
    QPointF last_;
    bool isDragged_ = false;
    std::size_t coarseness_ = 0; ///< index into the shares of pixels that are drawn
    bool stale_ = true;
    std::unique_ptr<QOffscreenSurface> surface_;
    std::unique_ptr<QOpenGLContext> context_;
    std::unique_ptr<QOpenGLFramebufferObject> target_;
    std::unique_ptr<QOpenGLShaderProgram> program_;
    QMatrix4x4 camera_, screen_; ///< of the picture being drawn
    PerEnd<Part> running_, blanks_, ports_, webs_, rails_;
    Part shaft_, key_, piston_, crown_, rings_, fork_, bronze_, roller_, marks_, liner_, head_,
        gas_;
};

} // namespace lobewright::ui
