#include "ui/plots/base/plot_export.h"

#include "ui/base/file_to_write.h"
#include "ui/base/last_folder.h"
#include "ui/base/palette.h"
#include "ui/base/plain_message.h"
#include "ui/base/save_bytes.h"
#include "ui/plots/base/custom_plot.h"
#include "ui/plots/base/plot_data.h"

#include <QBuffer>
#include <QClipboard>
#include <QDate>
#include <QGuiApplication>
#include <QMenu>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QPrintDialog>
#include <QPrinter>
#include <QSettings>
#include <QSvgGenerator>
#include <QWidget>

namespace lobewright::ui {

namespace {

/// Dots of an inch on every device that a view is painted on: as on screens, so that letters keep
/// their size beside the lines.
constexpr int dotsPerInch = 96;

void paintPlot(QCustomPlot& plot, QCPPainter& painter) {
    painter.setMode(QCPPainter::pmVectorized);
    painter.setMode(QCPPainter::pmNoCaching);
    plot.toPainter(&painter, plot.width(), plot.height());
}

/// Paints the view, and plots in it as lines and text, not as their screen buffer.
void paintView(QWidget& view, QCPPainter& painter) {
    if (auto* plot = qobject_cast<QCustomPlot*>(&view)) {
        paintPlot(*plot, painter);
        return;
    }
    painter.fillRect(view.rect(), view.palette().window());
    const auto plots = view.findChildren<QCustomPlot*>();
    if (plots.isEmpty()) {
        view.render(&painter, {}, {}, QWidget::DrawWindowBackground | QWidget::DrawChildren);
        return;
    }
    for (QWidget* child : view.findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
        if (!child->isVisible())
            continue;
        painter.save();
        painter.translate(child->pos());
        if (auto* plot = qobject_cast<QCustomPlot*>(child)) {
            paintPlot(*plot, painter);
        } else {
            child->render(&painter, {}, {}, QWidget::DrawWindowBackground | QWidget::DrawChildren);
        }
        painter.restore();
    }
}

QImage image(QWidget& view, double scale) {
    QImage picture(view.size() * scale, QImage::Format_ARGB32_Premultiplied);
    const int dotsPerMeter = qRound(dotsPerInch / 0.0254);
    picture.setDotsPerMeterX(dotsPerMeter);
    picture.setDotsPerMeterY(dotsPerMeter);
    QCPPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(scale, scale);
    paintView(view, painter);
    painter.end();
    picture.setDotsPerMeterX(qRound(dotsPerMeter * scale)); // of the same size on paper
    picture.setDotsPerMeterY(qRound(dotsPerMeter * scale));
    return picture;
}

/// `heading`: a line above the view; may be empty.
template <class Device>
void paintPage(QWidget& view, Device& device, const QString& heading = {}) {
    QCPPainter painter(&device);
    QSizeF page(device.width(), device.height());
    if (!heading.isEmpty()) {
        const double line = 1.6 * painter.fontMetrics().height();
        painter.drawText(QPointF(0.0, painter.fontMetrics().ascent()), heading);
        painter.translate(0.0, line);
        page.rheight() -= line;
    }
    const double scale = std::min(page.width() / view.width(), page.height() / view.height());
    painter.scale(scale, scale);
    paintView(view, painter);
}

bool writeSvg(QWidget& view, const QString& title, QIODevice& file) {
    QSvgGenerator generator;
    generator.setOutputDevice(&file);
    generator.setSize(view.size());
    generator.setViewBox(view.rect());
    generator.setTitle(title);
    generator.setResolution(dotsPerInch);
    QCPPainter painter(&generator);
    paintView(view, painter);
    return painter.end();
}

bool writePdf(QWidget& view, const QString& title, QIODevice& file) {
    QPdfWriter writer(&file);
    writer.setTitle(title);
    writer.setCreator(QStringLiteral("Lobewright"));
    // One page of the size of the view.
    writer.setPageSize(QPageSize(QSizeF(view.size()) * 72.0 / dotsPerInch, QPageSize::Point));
    writer.setPageMargins(QMarginsF());
    writer.setResolution(dotsPerInch);
    paintPage(view, writer);
    return true;
}

} // namespace

void copyPicture(QWidget& view) {
    QGuiApplication::clipboard()->setImage(image(view, 2.0));
}

bool writePicture(QWidget& view, const QString& title, const QString& name) {
    QBuffer file;
    file.open(QIODevice::WriteOnly);
    bool written = false;
    if (name.endsWith(QLatin1String(".svg"), Qt::CaseInsensitive))
        written = writeSvg(view, title, file);
    else if (name.endsWith(QLatin1String(".pdf"), Qt::CaseInsensitive))
        written = writePdf(view, title, file);
    else
        written = image(view, 2.0).save(&file, "PNG");
    return written && !saveBytes(name, file.data());
}

namespace {

/// Where something of a view is to be written, in the folder of the picture before; empty: nowhere.
QString askForFile(QWidget& view, const QString& caption, const QString& title,
                   const QString& ending, const QString& filter) {
    QSettings settings;
    const QString kept = settings.value(QStringLiteral("pictures/folder")).toString();
    const QString folder = !kept.isEmpty() && QDir(kept).exists() ? kept : lastFolder();
    QString name =
        fileToWrite(view.window(), caption, folder + QLatin1Char('/') + title + ending, filter);
    if (!name.isEmpty())
        settings.setValue(QStringLiteral("pictures/folder"), QFileInfo(name).absolutePath());
    return name;
}

} // namespace

void savePicture(QWidget& view, const QString& title) {
    const QString name =
        askForFile(view, QObject::tr("Save picture"), title, QStringLiteral(".png"),
                   QObject::tr("Picture (*.png);;Scalable drawing (*.svg);;Page (*.pdf)"));
    if (name.isEmpty())
        return;
    if (!writePicture(view, title, name)) {
        warn(view.window(), QObject::tr("Picture not saved"),
             QObject::tr("%1 could not be written.").arg(name));
    }
}

void copyData(QWidget& view) {
    QGuiApplication::clipboard()->setText(tabbedOf(dataOf(view)));
}

bool writeData(QWidget& view, const QString& name) {
    return !saveBytes(name, csvOf(dataOf(view)).toUtf8());
}

void saveData(QWidget& view, const QString& title) {
    const QString name = askForFile(view, QObject::tr("Save data"), title, QStringLiteral(".csv"),
                                    QObject::tr("Comma-separated values (*.csv)"));
    if (name.isEmpty())
        return;
    if (!writeData(view, name)) {
        warn(view.window(), QObject::tr("Data not saved"),
             QObject::tr("%1 could not be written.").arg(name));
    }
}

void printPicture(QWidget& view, const QString& title) {
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(title);
    printer.setCreator(QStringLiteral("Lobewright"));
    printer.setPageOrientation(QPageLayout::Landscape);
    QPrintDialog dialog(&printer, view.window());
    if (dialog.exec() != QDialog::Accepted)
        return;
    // Paper is white, whatever ground the screen has.
    const bool isDark = Palette::of(view).isDark;
    if (isDark)
        view.setPalette(Palette::lightTones().widgetPalette());
    printer.setResolution(dotsPerInch);
    paintPage(view, printer,
              QObject::tr("%1, %2").arg(title, QDate::currentDate().toString(Qt::ISODate)));
    if (isDark)
        view.setPalette(QPalette());
}

void addPictureActions(QMenu& menu, QWidget& view, const QString& title) {
    menu.addAction(QObject::tr("&Copy as picture"), &view, [&view] { copyPicture(view); });
    const bool hasData = !dataOf(view).empty();
    if (hasData)
        menu.addAction(QObject::tr("Copy &data"), &view, [&view] { copyData(view); });
    menu.addAction(QObject::tr("&Save picture…"), &view,
                   [&view, title] { savePicture(view, title); });
    if (hasData) {
        menu.addAction(QObject::tr("Sa&ve data…"), &view,
                       [&view, title] { saveData(view, title); });
    }
    menu.addAction(QObject::tr("&Print…"), &view, [&view, title] { printPicture(view, title); });
}

} // namespace lobewright::ui
