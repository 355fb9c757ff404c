#include "ui/scene/section/frame_export.h"

#include "core/units.h"
#include "ui/base/save_bytes.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QFile>
#include <QImage>
#include <QPainter>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FrameExport)
};

/// Puts the view back as it was, whatever happens.
class Restored {
  public:
    Restored(TurnView& view, TurnCursor& cursor)
        : view_(view), cursor_(cursor), size_(view.size()), angle_(cursor.angle()),
          playing_(cursor.isPlaying()) {
        cursor_.setPlaying(false);
        view_.clearFocus();
        view_.setUpdatesEnabled(false);
    }
    ~Restored() {
        view_.resize(size_);
        cursor_.setAngle(angle_);
        cursor_.setPlaying(playing_);
        view_.setUpdatesEnabled(true);
    }
    Restored(const Restored&) = delete;
    Restored& operator=(const Restored&) = delete;

  private:
    TurnView& view_;
    TurnCursor& cursor_;
    QSize size_;
    double angle_;
    bool playing_;
};

} // namespace

QString FrameExport::file(int picture) const {
    const QString number = QString::number(picture + 1).rightJustified(4, QLatin1Char('0'));
    return folder.filePath(QStringLiteral("%1-%2.png").arg(stem, number));
}

std::optional<QString> exportFrames(TurnView& view, TurnCursor& cursor, const FrameExport& wanted,
                                    const std::function<bool(int)>& step) {
    const Restored restored(view, cursor);
    view.resize(wanted.size);
    QStringList written;
    const auto undo = [&written] {
        for (const QString& file : written)
            QFile::remove(file); // what another film left there is replaced already
    };
    for (int i = 0; i < wanted.frames; ++i) {
        cursor.setAngle(units::turn * i / wanted.frames);
        QImage image(wanted.size, QImage::Format_RGB32);
        QPainter painter(&image);
        view.render(&painter, QPoint(), QRegion(), QWidget::DrawChildren);
        painter.end();
        const QString file = wanted.file(i);
        QBuffer bytes;
        bytes.open(QIODevice::WriteOnly);
        if (!image.save(&bytes, "PNG") || saveBytes(file, bytes.data())) {
            undo();
            return Words::tr("%1 cannot be written.").arg(file);
        }
        written << file;
        if (!step(i + 1)) {
            undo();
            return Words::tr("Stopped after %1 of %2 pictures.").arg(i + 1).arg(wanted.frames);
        }
    }
    return std::nullopt;
}

} // namespace lobewright::ui
