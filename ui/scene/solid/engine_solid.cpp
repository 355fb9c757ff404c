#include "ui/scene/solid/engine_solid.h"

#include "core/units.h"
#include "ui/base/palette.h"

#include <QOffscreenSurface>
#include <QOpenGLContext>
#include <QOpenGLFramebufferObject>
#include <QOpenGLFunctions>
#include <QOpenGLShaderProgram>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

// Lambert light from the eye's upper left on both sides of a face; `flat` 1: the tone as it is.
constexpr const char* vertexShader = R"(
attribute highp vec3 corner;
attribute highp vec3 normal;
uniform highp mat4 toScreen;
uniform highp mat4 toEye;
varying highp vec3 facing;
void main() {
    facing = mat3(toEye[0].xyz, toEye[1].xyz, toEye[2].xyz) * normal;
    gl_Position = toScreen * vec4(corner, 1.0);
}
)";
constexpr const char* fragmentShader = R"(
uniform mediump vec3 tone;
uniform mediump float evenness;
varying highp vec3 facing;
void main() {
    mediump float light = abs(dot(normalize(facing), normalize(vec3(-0.35, 0.55, 0.76))));
    mediump float share = mix(0.42 + 0.58 * light, 1.0, evenness);
    gl_FragColor = vec4(tone * share, 1.0);
}
)";

constexpr float fieldOfView = 32.0F;
constexpr int samplesPerPixel = 4;

} // namespace

EngineSolid::EngineSolid(TurnCursor& cursor, QWidget* parent) : QWidget(parent), cursor_(cursor) {
    setObjectName(QStringLiteral("engineSolid"));
    setAccessibleName(tr("3D view of the engine"));
    setToolTip(tr("Drag to rotate the view, turn the wheel to zoom."));
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_OpaquePaintEvent);
    connect(&cursor_, &TurnCursor::angleChanged, this, [this] { update(); });
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
    engine_.setGeometry(geometry);
    stale_ = true;
    update();
}

void EngineSolid::showSolution(const SolutionPointer& solution) {
    engine_.setSolution(solution);
    stale_ = true;
    update();
}

void EngineSolid::setView(const View& view) {
    view_ = view;
    view_.height = std::clamp(view_.height, -89.0F, 89.0F);
    view_.distance = std::clamp(view_.distance, 0.25F, 4.0F);
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
    for (Part* part :
         {&tracks_.inlet, &tracks_.exhaust, &ports_.inlet, &ports_.exhaust, &webs_.inlet,
          &webs_.exhaust, &shaft_, &key_, &piston_, &rod_, &roller_, &liner_, &head_, &gas_})
        part->buffer.destroy();
    program_.reset();
    target_.reset();
    context_->doneCurrent();
}

void EngineSolid::load(Part& part, const SolidMesh& mesh) {
    if (!part.buffer.isCreated())
        part.buffer.create();
    part.buffer.bind();
    part.buffer.allocate(mesh.corners.data(),
                         static_cast<int>(mesh.corners.size() * sizeof(float)));
    part.buffer.release();
    part.size = mesh.size();
}

void EngineSolid::loadParts() {
    const auto& pair = engine_.pair();
    const auto& mechanism = pair.mechanism();
    const SolidSizes sizes = solidSizes(pair);
    const double b = 0.5 * mechanism.bore, r = mechanism.roller.radius;
    const double whole = units::turn;
    for (const End end : bothEnds) {
        if (pair.uncovers(end) == end)
            load(tracks_[end], trackMesh(pair, end));
        load(ports_[end], portMesh(engine_, end));
    }
    loadShaft(sizes);
    load(piston_, tubeMesh(0.0, 0.985 * b, 0.0, sizes.pistonLength, 0.0, whole));
    load(rod_, rodMesh(pair));
    const double w = mechanism.roller.width;
    load(roller_, tubeMesh(0.0, r, -0.5 * w, 0.5 * w, 0.0, whole));
    double liner = 0.0;
    for (const End end : pair.pistons()) {
        liner = std::max(liner, 0.5 * mechanism.clearance + pair.curve(end).stroke() +
                                    0.4 * sizes.pistonLength);
    }
    // Opened on the side away from the shaft, which is polar angle 0 of the bore's own frame.
    const double face = 0.5 * mechanism.clearance;
    const bool isOneSided = mechanism.isOneSided();
    load(liner_,
         tubeMesh(b, 1.12 * b, -liner, isOneSided ? face : liner, 0.25 * whole, 0.75 * whole));
    if (isOneSided)
        load(head_, tubeMesh(0.0, 1.12 * b, face, face + 0.45 * b, 0.0, whole));
    load(gas_, tubeMesh(0.0, 0.98 * b, 0.0, 1.0, 0.0, whole));
    stale_ = false;
}

/// The shaft, a line along it that shows how it stands, and a web with a hub behind each track.
void EngineSolid::loadShaft(const SolidSizes& sizes) {
    const auto& pair = engine_.pair();
    const auto& mechanism = pair.mechanism();
    const double r = mechanism.roller.radius, whole = units::turn;
    const double back = std::abs(rollerOrigin(pair, End::inlet)) + 2.0 * r;
    const double reach = back + 0.9 * r, s = sizes.shaftRadius;
    // No second track to carry: the shaft ends behind the heads.
    const double end = mechanism.isOneSided() ? 0.5 * mechanism.clearance + mechanism.bore : reach;
    load(shaft_, tubeMesh(0.0, s, -reach, end, 0.0, whole));
    const double half = 0.5 * units::degree * 8.0;
    load(key_, tubeMesh(0.9 * s, 1.08 * s, -reach, end, -half, half));
    const double rim = mechanism.pitchRadius - 0.5 * sizes.trackWidth;
    for (const End side : pair.pistons()) {
        const double sign = side == End::inlet ? -1.0 : 1.0;
        const double face = std::abs(rollerOrigin(pair, side)) + 2.0 * r;
        const auto part = [&](double outer, double from, double to) {
            return tubeMesh(s, outer, std::min(sign * from, sign * to),
                            std::max(sign * from, sign * to), 0.0, whole);
        };
        SolidMesh web = part(1.02 * rim, face - 0.5 * r, face);
        const SolidMesh hub = part(std::min(1.6 * s, rim), face - 1.2 * r, face + 0.5 * r);
        web.corners.insert(web.corners.end(), hub.corners.begin(), hub.corners.end());
        load(webs_[side], web);
    }
}

QMatrix4x4 EngineSolid::lens() const {
    QMatrix4x4 screen;
    const float aspect = static_cast<float>(width()) / static_cast<float>(std::max(1, height()));
    const float size = static_cast<float>(engine_.pair().mechanism().pitchRadius);
    screen.perspective(fieldOfView, aspect, 0.05F * size, 80.0F * size);
    return screen;
}

QMatrix4x4 EngineSolid::camera() const {
    const auto& mechanism = engine_.pair().mechanism();
    const double reach =
        std::hypot(std::abs(rollerOrigin(engine_.pair(), engine_.pair().pistons().back())),
                   mechanism.pitchRadius + 0.6 * mechanism.bore) +
        mechanism.roller.radius;
    const float aspect = static_cast<float>(width()) / static_cast<float>(std::max(1, height()));
    const float narrow = std::min(1.0F, aspect);
    const float far = static_cast<float>(reach) /
                      std::sin(0.5F * fieldOfView * static_cast<float>(units::degree)) / narrow *
                      view_.distance;
    QMatrix4x4 eye;
    eye.translate(0.0F, 0.0F, -far);
    eye.rotate(view_.height, 1.0F, 0.0F, 0.0F);
    eye.rotate(view_.azimuth, 0.0F, 1.0F, 0.0F);
    eye.rotate(90.0F, 0.0F, 1.0F, 0.0F); // the shaft lies across, inlet end to the left
    if (mechanism.isOneSided())          // its middle is that of the piston's travel, not the head
        eye.translate(0.0F, 0.0F,
                      0.4F *
                          static_cast<float>(std::abs(rollerOrigin(engine_.pair(), End::inlet))));
    return eye;
}

void EngineSolid::draw(Part& part, const QMatrix4x4& place, const QColor& colour, float flat) {
    auto* gl = context_->functions();
    program_->setUniformValue("toEye", camera_ * place);
    program_->setUniformValue("toScreen", lens() * camera_ * place);
    program_->setUniformValue("tone", QVector3D(colour.redF(), colour.greenF(), colour.blueF()));
    program_->setUniformValue("evenness", flat);
    part.buffer.bind();
    program_->enableAttributeArray(0);
    program_->enableAttributeArray(1);
    program_->setAttributeBuffer(0, GL_FLOAT, 0, 3, 6 * sizeof(float));
    program_->setAttributeBuffer(1, GL_FLOAT, 3 * sizeof(float), 3, 6 * sizeof(float));
    gl->glDrawArrays(GL_TRIANGLES, 0, part.size);
    part.buffer.release();
}

void EngineSolid::drawCylinder(int index) {
    const Palette& p = Palette::of(*this);
    const auto& pair = engine_.pair();
    const auto& mechanism = pair.mechanism();
    const SolidSizes sizes = solidSizes(pair);
    const double theta = engine_.angleOfCylinder(index, cursor_.angle());
    const auto angles = mechanism::cylinderAngles(mechanism);
    QMatrix4x4 bore;
    bore.rotate(static_cast<float>(angles[static_cast<std::size_t>(index)] / units::degree), 0, 0,
                1);
    bore.translate(static_cast<float>(mechanism.pitchRadius), 0, 0);
    draw(liner_, bore, p.metalPale);
    PerEnd<double> crowns;
    for (const End end : bothEnds) {
        draw(ports_[end], bore, p.side(end));
        if (pair.uncovers(end) != end) {
            crowns[end] = 0.5 * mechanism.clearance;
            draw(head_, bore, p.tint(p.metalPale, 0.8));
            continue;
        }
        const double sign = end == End::inlet ? -1.0 : 1.0;
        const double axis = rollerOrigin(pair, end) - sign * pair.lift(end, theta).y;
        crowns[end] = axis - sign * sizes.axisDistance;
        QMatrix4x4 place = bore;
        place.translate(0, 0, static_cast<float>(crowns[end]));
        if (end == End::inlet)
            place.rotate(180.0F, 1, 0, 0); // its own z points outward
        draw(piston_, place, p.metal);
        draw(rod_, place, p.tint(p.metal, 0.75));
        QMatrix4x4 roll = bore;
        roll.translate(0, 0, static_cast<float>(axis));
        roll.rotate(90.0F, 0, 1, 0); // its axis is radial
        draw(roller_, roll, p.tint(p.metal, 0.8));
    }
    const auto gas = engine_.gasAt(theta);
    QMatrix4x4 chamber = bore;
    chamber.translate(0, 0, static_cast<float>(crowns.inlet));
    chamber.scale(1, 1, static_cast<float>(crowns.exhaust - crowns.inlet));
    draw(gas_, chamber, !gas ? p.panel : gas->burning ? p.burning : p.gas(gas->burntShare), 1.0F);
}

void EngineSolid::drawScene() {
    const Palette& p = Palette::of(*this);
    auto* gl = context_->functions();
    gl->glClearColor(static_cast<GLfloat>(p.paper.redF()), static_cast<GLfloat>(p.paper.greenF()),
                     static_cast<GLfloat>(p.paper.blueF()), 1.0F);
    gl->glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT);
    if (engine_.isEmpty() || !initialize())
        return;
    if (stale_)
        loadParts();
    gl->glEnable(GL_DEPTH_TEST);
    program_->bind();
    camera_ = camera();
    QMatrix4x4 turned;
    turned.rotate(static_cast<float>(cursor_.angle() / units::degree), 0, 0, 1);
    draw(shaft_, turned, p.metal);
    draw(key_, turned, p.ink, 1.0F);
    for (const End end : engine_.pair().pistons()) {
        draw(tracks_[end], turned, p.tint(p.side(end), 0.8));
        draw(webs_[end], turned, p.metalPale);
    }
    for (int k = 0; k < engine_.cylinders(); ++k)
        drawCylinder(k);
    program_->release();
    gl->glDisable(GL_DEPTH_TEST);
}

QImage EngineSolid::picture() {
    if (size().isEmpty() || !makeCurrent())
        return {};
    const QSize pixels = size() * devicePixelRatioF();
    if (!target_ || target_->size() != pixels) {
        QOpenGLFramebufferObjectFormat format;
        format.setAttachment(QOpenGLFramebufferObject::CombinedDepthStencil);
        format.setSamples(samplesPerPixel);
        target_ = std::make_unique<QOpenGLFramebufferObject>(pixels, format);
    }
    target_->bind();
    context_->functions()->glViewport(0, 0, pixels.width(), pixels.height());
    drawScene();
    target_->release();
    QImage image = target_->toImage();
    context_->doneCurrent();
    image.setDevicePixelRatio(devicePixelRatioF());
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(font());
    paintWords(painter);
    return image;
}

void EngineSolid::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const QImage image = picture();
    if (image.isNull())
        painter.fillRect(rect(), Palette::of(*this).paper);
    else
        painter.drawImage(QPointF(0, 0), image);
}

} // namespace lobewright::ui
