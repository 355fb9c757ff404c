#pragma once

#include <QImage>
#include <QString>

namespace lobewright::ui {

/// A picture to measure in, or why there is none.
struct LoadedPicture {
    QImage image;
    int pages = 1;   ///< of a PDF
    QString problem; ///< empty: loaded
};

/// Reads PNG, JPEG and whatever else the system shows, or a page of a PDF (counted from 0).
LoadedPicture loadPicture(const QString& file, int page = 0);

/// The filter of a file dialog.
QString pictureFilter();

} // namespace lobewright::ui
