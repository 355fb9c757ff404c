#include "ui/scene/solid/engine_solid.h"

#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/drawing.h"
#include "ui/base/palette.h"
#include "ui/scene/section/gas_tone.h"
#include "ui/scene/solid/liner_mesh.h"
#include "ui/scene/solid/solid_points.h"
#include "ui/scene/solid/solid_tones.h"

#include <QElapsedTimer>
#include <QOffscreenSurface>
#include <QOpenGLContext>
#include <QOpenGLFramebufferObject>
#include <QOpenGLFunctions>
#include <QOpenGLShaderProgram>
#include <QRadialGradient>

#include <algorithm>
#include <array>
#include <cmath>

namespace lobewright::ui {

namespace {

// Three lights from the eye's side: a key from the upper left, a fill from the right, one from
// below behind; a face seen from behind is lit as if it were turned. Where a surface turns away
// from the eye it darkens to a line. `evenness` 1: the tone as it is.
constexpr const char* vertexShader = R"(
attribute highp vec3 corner;
attribute highp vec3 normal;
uniform highp mat4 toScreen;
uniform highp mat4 toEye;
varying highp vec3 facing;
varying highp vec3 place;
void main() {
    facing = mat3(toEye[0].xyz, toEye[1].xyz, toEye[2].xyz) * normal;
    place = (toEye * vec4(corner, 1.0)).xyz;
    gl_Position = toScreen * vec4(corner, 1.0);
}
)";
constexpr const char* fragmentShader = R"(
uniform mediump vec3 tone;
uniform mediump float evenness;
uniform mediump float shine;
uniform mediump float alpha;
varying highp vec3 facing;
varying highp vec3 place;
void main() {
    highp vec3 n = normalize(facing);
    highp vec3 eye = normalize(-place);
    if (dot(n, eye) < 0.0)
        n = -n;
    highp vec3 key = normalize(vec3(-0.45, 0.65, 0.62));
    mediump float light = 0.30 + 0.58 * max(dot(n, key), 0.0) +
                          0.20 * max(dot(n, normalize(vec3(0.8, 0.1, 0.5))), 0.0) +
                          0.12 * max(dot(n, normalize(vec3(0.1, -0.9, 0.2))), 0.0);
    mediump float glint = shine * pow(max(dot(n, normalize(key + eye)), 0.0), 28.0);
    mediump float line = 0.55 + 0.45 * smoothstep(0.05, 0.34, dot(n, eye));
    mediump vec3 lit = tone * min(light, 1.1) * line + vec3(glint);
    gl_FragColor = vec4(mix(lit, tone, evenness) * alpha, alpha);
}
)";

constexpr int samplesPerPixel = 4;
// Of width and height, from fine to coarse; times of a frame [ms] that call for the next one.
constexpr std::array shares = {1.0, 0.8, 0.6, 0.45, 0.34};
constexpr double slowFrame = 26.0, fastFrame = 11.0;

/// Whether two engines have the same solids.
bool isOfSameShape(const design::Design& a, const design::Design& b) {
    return a.mechanism == b.mechanism && a.tracks == b.tracks && a.ports == b.ports &&
           a.friction.rings == b.friction.rings && a.gas.supply.kind == b.gas.supply.kind &&
           a.gas.supply.pump.sides == b.gas.supply.pump.sides &&
           a.gas.supply.pump.skirtRow == b.gas.supply.pump.skirtRow;
}

} // namespace

EngineSolid::EngineSolid(TurnCursor& cursor, QWidget* parent) : QWidget(parent), cursor_(cursor) {
    setObjectName(QStringLiteral("engineSolid"));
    describe(*this, tr("3D view of the engine"),
             tr("Drag to rotate the view, turn the wheel to zoom."));
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_OpaquePaintEvent);
    connect(&cursor_, &TurnCursor::angleChanged, this, [this] { update(); });
    connect(&cursor_, &TurnCursor::playingChanged, this, [this] { update(); });
}

EngineSolid::~EngineSolid() {
    release();
}

bool EngineSolid::isAvailable() {
    static const bool available = [] {
        QOpenGLContext context;
        if (!context.create())
            return false;
        QOffscreenSurface surface;
        surface.setFormat(context.format());
        surface.create();
        return surface.isValid() && context.makeCurrent(&surface);
    }();
    return available;
}

void EngineSolid::showGeometry(const GeometryPointer& geometry) {
    changeEngine([&] { engine_.setGeometry(geometry); });
}

void EngineSolid::showSolution(const SolutionPointer& solution) {
    changeEngine([&] { engine_.setSolution(solution); });
}

/// Solids are made anew only where the change gave the engine another shape: while a handle is
/// dragged, most solutions belong to the geometry that is shown already.
void EngineSolid::changeEngine(const std::function<void()>& change) {
    const auto before = engine_.isEmpty() ? nullptr : engine_.sharedDesign();
    change();
    if (!engine_.isEmpty() && !(before && isOfSameShape(*before, engine_.design()))) {
        sizes_ = solidSizes(engine_.pair());
        stale_ = true;
    }
    update();
}

void EngineSolid::setPartNames(const PartNames& names) {
    names_ = &names;
    connect(&names, &PartNames::shownChanged, this, [this] { update(); });
    update();
}

void EngineSolid::setView(const View& view) {
    view_ = view;
    view_.height = std::clamp(view_.height, -89.0F, 89.0F);
    view_.distance = std::clamp(view_.distance, 0.15F, 4.0F);
    view_.apart = std::clamp(view_.apart, 0.0F, 1.0F);
    update();
}

bool EngineSolid::makeCurrent() {
    if (!context_) {
        context_ = std::make_unique<QOpenGLContext>();
        surface_ = std::make_unique<QOffscreenSurface>();
        if (!context_->create())
            return false;
        surface_->setFormat(context_->format());
        surface_->create();
    }
    return context_->isValid() && context_->makeCurrent(surface_.get());
}

bool EngineSolid::initialize() {
    if (program_)
        return program_->isLinked();
    program_ = std::make_unique<QOpenGLShaderProgram>();
    program_->addShaderFromSourceCode(QOpenGLShader::Vertex, vertexShader);
    program_->addShaderFromSourceCode(QOpenGLShader::Fragment, fragmentShader);
    program_->bindAttributeLocation("corner", 0);
    program_->bindAttributeLocation("normal", 1);
    stale_ = true;
    return program_->link();
}

void EngineSolid::release() {
    if (!context_ || !makeCurrent())
        return;
    for (Part* part : {&running_.inlet, &running_.exhaust,
                       &blanks_.inlet,  &blanks_.exhaust,
                       &ports_.inlet,   &ports_.exhaust,
                       &webs_.inlet,    &webs_.exhaust,
                       &rails_.inlet,   &rails_.exhaust,
                       &shaft_,         &key_,
                       &piston_,        &crown_,
                       &rings_,         &fork_,
                       &bronze_,        &roller_,
                       &marks_,         &liner_,
                       &head_,          &gas_})
        part->buffer.destroy();
    program_.reset();
    target_.reset();
    context_->doneCurrent();
}

void EngineSolid::draw(Part& part, const QMatrix4x4& place, const QColor& colour,
                       const Finish& finish) {
    auto* gl = context_->functions();
    program_->setUniformValue("toEye", camera_ * place);
    program_->setUniformValue("toScreen", screen_ * place);
    program_->setUniformValue("tone", QVector3D(colour.redF(), colour.greenF(), colour.blueF()));
    program_->setUniformValue("evenness", finish.evenness);
    program_->setUniformValue("shine", finish.shine);
    program_->setUniformValue("alpha", finish.alpha);
    part.buffer.bind();
    program_->enableAttributeArray(0);
    program_->enableAttributeArray(1);
    program_->setAttributeBuffer(0, GL_FLOAT, 0, 3, 6 * sizeof(float));
    program_->setAttributeBuffer(1, GL_FLOAT, 3 * sizeof(float), 3, 6 * sizeof(float));
    gl->glDrawArrays(GL_TRIANGLES, 0, part.size);
    part.buffer.release();
}

/// Piston, crosshead and roller of one end.
void EngineSolid::drawEnd(const QMatrix4x4& bore, End end, double theta) {
    const auto& pair = engine_.pair();
    const SolidTones tones(Palette::of(*this));
    const double sign = end == End::inlet ? -1.0 : 1.0;
    const double top = crown(end, theta) + 0.5 * apart(end);
    const double axis = top + sign * sizes_.axisDistance;
    QMatrix4x4 place = bore;
    place.translate(0, 0, static_cast<float>(top));
    if (end == End::inlet)
        place.rotate(180.0F, 1, 0, 0); // its own z points outward
    draw(piston_, place, tones.alloy, {0.25F});
    draw(crown_, place, Palette::of(*this).side(end), {0.1F, 0.3F});
    draw(rings_, place, tones.dark, {0.0F, 0.6F});
    draw(fork_, place, tones.fork, {0.3F});
    draw(bronze_, place, tones.bronze, {0.35F});
    QMatrix4x4 roll = bore;
    roll.translate(0, 0, static_cast<float>(axis));
    roll.rotate(90.0F, 0, 1, 0); // its axis is radial
    const double rolled = rolled_[end].at(pair.trackAngle(end, theta));
    roll.rotate(static_cast<float>(-sign * rolled / pair.mechanism().roller.radius / units::degree),
                0, 0, 1);
    draw(roller_, roll, tones.roller, {0.6F});
    draw(marks_, roll, tones.dark, {0.0F, 0.6F});
}

void EngineSolid::drawCylinder(int index) {
    const Palette& p = Palette::of(*this);
    const SolidTones tones(p);
    const auto& pair = engine_.pair();
    const double theta = engine_.angleOfCylinder(index, cursor_.angle());
    const QMatrix4x4 bore = boreOf(index);
    PerEnd<double> crowns;
    for (const End end : bothEnds) {
        // Seen through the glass from either side.
        context_->functions()->glDisable(GL_CULL_FACE);
        draw(ports_[end], bore, p.side(end), {0.0F, 0.6F});
        context_->functions()->glEnable(GL_CULL_FACE);
        crowns[end] = crown(end, theta);
        if (pair.uncovers(end) != end) {
            draw(head_, bore, tones.rail, {0.1F});
            continue;
        }
        drawEnd(bore, end, theta);
        draw(rails_[end], bore, tones.rail, {0.1F});
    }
    const auto gas = engine_.gasAt(theta);
    QMatrix4x4 chamber = bore;
    chamber.translate(0, 0, static_cast<float>(crowns.inlet));
    chamber.scale(1, 1, static_cast<float>(crowns.exhaust - crowns.inlet));
    if (view_.apart <= 0.0F)
        draw(gas_, chamber, gas ? heatTone(p, gas->temperature) : p.panel, {0.0F, 1.0F});
}

/// Liners are glass: after all that shows through them, without hiding one another.
void EngineSolid::drawGlass() {
    auto* gl = context_->functions();
    gl->glEnable(GL_BLEND);
    gl->glBlendFunc(GL_ONE, GL_ONE_MINUS_SRC_ALPHA);
    gl->glDepthMask(GL_FALSE);
    gl->glEnable(GL_CULL_FACE);
    const SolidTones tones(Palette::of(*this));
    for (int k = 0; k < engine_.cylinders(); ++k) {
        const QMatrix4x4 bore = boreOf(k);
        // The far wall first: glass lies over glass.
        for (const GLenum hidden : {GL_FRONT, GL_BACK}) {
            gl->glCullFace(hidden);
            draw(liner_, bore, tones.glass, {0.5F, 0.2F, 0.22F});
        }
    }
    gl->glDepthMask(GL_TRUE);
    gl->glDisable(GL_BLEND);
}

void EngineSolid::drawScene() {
    const Palette& p = Palette::of(*this);
    const SolidTones tones(p);
    auto* gl = context_->functions();
    gl->glClearColor(0.0F, 0.0F, 0.0F, 0.0F); // what lies behind is painted below it
    gl->glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT);
    if (engine_.isEmpty() || !initialize())
        return;
    if (stale_)
        loadParts();
    gl->glEnable(GL_DEPTH_TEST);
    gl->glEnable(GL_CULL_FACE);
    gl->glCullFace(GL_BACK);
    program_->bind();
    QMatrix4x4 turned;
    turned.rotate(static_cast<float>(cursor_.angle() / units::degree), 0, 0, 1);
    draw(shaft_, turned, tones.steel, {0.5F});
    draw(key_, turned, tones.dark, {0.0F, 1.0F});
    for (const End end : engine_.pair().pistons()) {
        if (endBeforeEye() == end)
            continue;
        QMatrix4x4 place = turned;
        place.translate(0, 0, static_cast<float>(apart(end)));
        draw(running_[end], place, p.side(end), {0.3F, 0.45F});
        draw(blanks_[end], place, tones.iron, {0.12F});
        draw(webs_[end], place, tones.iron, {0.12F});
    }
    for (int k = 0; k < engine_.cylinders(); ++k)
        drawCylinder(k);
    drawGlass();
    program_->release();
    gl->glDisable(GL_CULL_FACE);
    gl->glDisable(GL_DEPTH_TEST);
}

/// The engine stands on the paper: its shadow lies below it, as wide as it is.
void EngineSolid::paintShadow(QPainter& painter, const Sight& sight) const {
    if (engine_.isEmpty() || view_.onRoller || view_.height < 0.0F)
        return;
    const auto& mechanism = engine_.pair().mechanism();
    const float low = static_cast<float>(mechanism.pitchRadius + 0.62 * mechanism.bore);
    float from = 0.0F, to = 0.0F;
    for (const QVector3D& point : sight.hull) {
        from = std::min(from, point.z());
        to = std::max(to, point.z());
    }
    const float middle = 0.5F * (from + to), far = 0.5F * (to - from);
    // A level ground under the lowest cylinder.
    QRectF bounds;
    for (int i = 0; i < 16; ++i) {
        const double angle = units::turn * i / 16.0;
        const auto point = onScreen(sight.screen,
                                    vector(low * static_cast<float>(std::cos(angle)), -low,
                                           middle + far * static_cast<float>(std::sin(angle))),
                                    size());
        if (!point)
            return; // the eye stands over its edge
        bounds = bounds.united(QRectF(*point, QSizeF(1.0, 1.0)));
    }
    const double squash = bounds.height() / std::max(1.0, bounds.width());
    QRadialGradient shade(QPointF(0.0, 0.0), 0.5 * bounds.width());
    QColor dark = Palette::of(*this).isDark ? QColor(0, 0, 0, 120) : QColor(60, 60, 70, 70);
    QColor clear = dark;
    clear.setAlpha(0);
    shade.setColorAt(0.0, dark);
    shade.setColorAt(0.6, dark);
    shade.setColorAt(1.0, clear);
    painter.save();
    painter.translate(bounds.center());
    painter.scale(1.0, squash);
    fillOnly(painter, shade);
    const double half = 0.5 * bounds.width();
    painter.drawEllipse(QPointF(0.0, 0.0), half, half);
    painter.restore();
}

/// The next picture in a hurry is coarser where this one took too long, finer where it was fast.
void EngineSolid::keepUp(double milliseconds) {
    if (milliseconds > slowFrame && coarseness_ + 1 < shares.size())
        ++coarseness_;
    else if (milliseconds < fastFrame && coarseness_ > 0)
        --coarseness_;
}

QImage EngineSolid::drawn(const QSize& pixels, int samples) {
    if (!target_ || target_->size() != pixels || target_->format().samples() != samples) {
        QOpenGLFramebufferObjectFormat format;
        format.setAttachment(QOpenGLFramebufferObject::CombinedDepthStencil);
        format.setSamples(samples);
        format.setInternalTextureFormat(GL_RGBA8);
        target_ = std::make_unique<QOpenGLFramebufferObject>(pixels, format);
    }
    target_->bind();
    context_->functions()->glViewport(0, 0, pixels.width(), pixels.height());
    drawScene();
    target_->release();
    return target_->toImage().convertToFormat(QImage::Format_ARGB32_Premultiplied);
}

bool EngineSolid::paintPicture(QPainter& painter) {
    if (size().isEmpty() || !makeCurrent())
        return false;
    const QSize pixels = size() * devicePixelRatioF();
    QElapsedTimer timer;
    timer.start();
    const Sight sight = engine_.isEmpty() ? Sight() : this->sight();
    camera_ = sight.eye;
    screen_ = sight.screen;
    const double share = isHurried() ? shares[coarseness_] : 1.0;
    const QImage engine = drawn((QSizeF(pixels) * share).toSize().expandedTo(QSize(16, 16)),
                                share < 1.0 ? 0 : samplesPerPixel);
    context_->doneCurrent();
    if (isHurried())
        keepUp(1e-6 * static_cast<double>(timer.nsecsElapsed()));
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(font());
    paintShadow(painter, sight);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(QRectF(rect()), engine);
    if (areNamed())
        paintNames(painter, sight);
    paintWords(painter, sight);
    return true;
}

QImage EngineSolid::picture() {
    QImage image(size() * devicePixelRatioF(), QImage::Format_RGB32);
    image.setDevicePixelRatio(devicePixelRatioF());
    image.fill(Palette::of(*this).paper);
    QPainter painter(&image);
    return paintPicture(painter) ? image : QImage();
}

void EngineSolid::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), Palette::of(*this).paper);
    paintPicture(painter);
}

} // namespace lobewright::ui
