#include "app/desk/session/csv_export.hpp"

#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QStandardPaths>

#include "app/files/bytes.hpp"

namespace loam::desk {

QString export_csv_asking(const QString& title, const QString& suggested_name, const std::string& csv, QWidget* parent)
{
    QFileDialog dialog(parent, title, QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation),
                       QObject::tr("Comma separated (*.csv);;All files (*)"));
    dialog.setObjectName(QStringLiteral("csvDialog"));
    dialog.setAcceptMode(QFileDialog::AcceptSave);  // asks before a file is replaced
    dialog.setDefaultSuffix(QStringLiteral("csv")); // before it asks, so that it asks about the right one
    dialog.selectFile(suggested_name + QStringLiteral(".csv"));
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty()) {
        return {};
    }
    QString path = dialog.selectedFiles().front();
    const QString error = files::write_bytes(QByteArray::fromStdString(csv), path);
    if (!error.isEmpty()) {
        QMessageBox::warning(parent, QObject::tr("The table was not saved"), error);
        return {};
    }
    return path;
}

} // namespace loam::desk
