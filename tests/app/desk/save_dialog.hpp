// Answers the next save dialog, and its question about replacing a file, as a hand would.
#pragma once

#include <QApplication>
#include <QFileDialog>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QTimer>

// Saves to this path. Where it is asked whether to replace a file it answers so; on "no" it leaves the dialog.
class SaveDialogHand : public QObject {
public:
    SaveDialogHand(const QString& path, QMessageBox::StandardButton replace, QObject* parent)
        : QObject(parent), path_(path), replace_(replace)
    {
        connect(&timer_, &QTimer::timeout, this, &SaveDialogHand::look);
        timer_.start(30);
    }
    bool was_asked() const { return asked_; }

private:
    void look()
    {
        QWidget* shown = QApplication::activeModalWidget();
        if (auto* box = qobject_cast<QMessageBox*>(shown); box != nullptr && box->button(replace_) != nullptr) {
            asked_ = true;
            box->button(replace_)->click();
            return;
        }
        auto* dialog = qobject_cast<QFileDialog*>(shown);
        if (dialog == nullptr) {
            return;
        }
        if (asked_ && replace_ == QMessageBox::No) {
            timer_.stop();
            dialog->reject();
        } else if (!pressed_) {
            pressed_ = true;
            dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"))->setText(path_);
            QTimer::singleShot(0, dialog, [dialog] { QMetaObject::invokeMethod(dialog, "accept"); });
        }
    }

    QString path_;
    QMessageBox::StandardButton replace_;
    QTimer timer_;
    bool pressed_ = false;
    bool asked_ = false;
};
