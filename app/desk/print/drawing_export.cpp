#include "app/desk/print/drawing_export.hpp"

#include <QBuffer>
#include <QFileDialog>
#include <QImage>
#include <QMessageBox>
#include <QStandardPaths>
#include <QSvgGenerator>

#include "app/files/bytes.hpp"

namespace loam::desk {

namespace {

constexpr QSize size_px(1200, 720);

void prepare(drawing::Picture& picture)
{
    picture.highlighted.clear();
    picture.in_hand.reset();
    picture.in_view.reset();
    picture.inks = drawing::Inks::light();
}

} // namespace

QByteArray drawing_as_svg(drawing::Picture picture, const QString& title)
{
    prepare(picture);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setSize(size_px);
    generator.setViewBox(QRect(QPoint(), size_px));
    generator.setTitle(title.toHtmlEscaped()); // the generator writes it as it is
    QPainter painter(&generator);
    drawing::paint(painter, QRectF(QPointF(), QSizeF(size_px)), picture);
    painter.end();
    return bytes;
}

QByteArray drawing_as_png(drawing::Picture picture)
{
    prepare(picture);
    constexpr int fineness = 2;
    QImage image(size_px * fineness, QImage::Format_RGB32);
    image.setDevicePixelRatio(fineness);
    QPainter painter(&image);
    drawing::paint(painter, QRectF(QPointF(), QSizeF(size_px)), picture);
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return bytes;
}

QString export_drawing_asking(const drawing::Picture& picture, const QString& title, QWidget* parent)
{
    QFileDialog dialog(parent, QObject::tr("Export the drawing"),
                       QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation),
                       QObject::tr("Scalable drawing (*.svg);;Picture (*.png)"));
    dialog.setObjectName(QStringLiteral("drawingDialog"));
    dialog.setAcceptMode(QFileDialog::AcceptSave); // asks before a file is replaced
    dialog.setDefaultSuffix(QStringLiteral("svg"));
    QObject::connect(&dialog, &QFileDialog::filterSelected, &dialog, [&dialog](const QString& filter) {
        dialog.setDefaultSuffix(filter.contains(QStringLiteral("png")) ? QStringLiteral("png") : QStringLiteral("svg"));
    });
    dialog.selectFile(QObject::tr("drawing") + QStringLiteral(".svg"));
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty()) {
        return {};
    }
    QString path = dialog.selectedFiles().front();
    const bool png = path.endsWith(QStringLiteral(".png"), Qt::CaseInsensitive);
    const QString error = files::write_bytes(png ? drawing_as_png(picture) : drawing_as_svg(picture, title), path);
    if (!error.isEmpty()) {
        QMessageBox::warning(parent, QObject::tr("The drawing was not saved"), error);
        return {};
    }
    return path;
}

} // namespace loam::desk
