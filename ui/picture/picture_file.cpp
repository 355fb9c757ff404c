#include "ui/picture/picture_file.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QImageReader>

#include <algorithm>
#include <cmath>
#include <poppler-qt6.h>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Picture)
};

constexpr double wantedResolution = 200.0; ///< of a page [dots/inch]
constexpr double mostPixels = 40e6;        ///< a larger page is rendered coarser
constexpr double pointsPerInch = 72.0;

LoadedPicture failed(const QString& problem) {
    return {{}, 1, problem};
}

LoadedPicture loadPage(const QString& file, int page) {
    const QString name = QFileInfo(file).fileName();
    const auto document = Poppler::Document::load(file);
    if (!document)
        return failed(Words::tr("%1 cannot be read as a PDF.").arg(name));
    if (document->isLocked())
        return failed(Words::tr("%1 is locked with a password.").arg(name));
    if (page < 0 || page >= document->numPages())
        return failed(Words::tr("%1 has no page %2.").arg(name).arg(page + 1));
    document->setRenderHint(Poppler::Document::Antialiasing);
    document->setRenderHint(Poppler::Document::TextAntialiasing);
    const auto sheet = document->page(page);
    if (!sheet)
        return failed(Words::tr("Page %1 of %2 cannot be shown.").arg(page + 1).arg(name));
    const QSizeF inches = sheet->pageSizeF() / pointsPerInch;
    const double coarsest =
        std::sqrt(mostPixels / std::max(inches.width() * inches.height(), 1e-6));
    const double resolution = std::min(wantedResolution, coarsest);
    const QImage image = sheet->renderToImage(resolution, resolution);
    if (image.isNull())
        return failed(Words::tr("Page %1 of %2 cannot be shown.").arg(page + 1).arg(name));
    return {image, document->numPages(), {}};
}

} // namespace

LoadedPicture loadPicture(const QString& file, int page) {
    if (file.endsWith(QLatin1String(".pdf"), Qt::CaseInsensitive))
        return loadPage(file, page);
    QImageReader reader(file);
    reader.setAutoTransform(true); // as the camera was held
    const QImage image = reader.read();
    if (image.isNull()) {
        return failed(Words::tr("%1 cannot be read as a picture: %2.")
                          .arg(QFileInfo(file).fileName(), reader.errorString()));
    }
    return {image, 1, {}};
}

QString pictureFilter() {
    return Words::tr("Pictures and PDF (*.png *.jpg *.jpeg *.bmp *.svg *.pdf);;All files (*)");
}

} // namespace lobewright::ui
