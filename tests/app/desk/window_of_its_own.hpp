// The base of tests that drive the whole window: each gets one of its own, in plain numbers and metric units, with
// nothing kept from any other.
#pragma once

#include <QLocale>
#include <QObject>
#include <QTemporaryDir>
#include <memory>

#include "app/desk/session/settings.hpp"
#include "app/desk/window.hpp"
#include "app/files/guidance.hpp"
#include "app/files/identity.hpp"

namespace loam::test {

inline constexpr int patience_ms = 60000; // an upper bound only: a slow machine must not fail the test

class WindowOfItsOwn : public QObject {
protected:
    // Once for all tests of a file. What is wrong with the guidance; empty: nothing.
    QStringList load_guidance()
    {
        qputenv("XDG_CONFIG_HOME", home_.path().toUtf8());
        qputenv("XDG_DATA_HOME", home_.filePath(QStringLiteral("data")).toUtf8()); // the waste bin too
        files::set_identity(*QCoreApplication::instance());
        files::Guidance guidance = files::load_guidance(QString());
        catalog_ = std::make_shared<const catalog::Catalog>(std::move(guidance.catalog));
        return guidance.problems;
    }

    void open_window()
    {
        QLocale::setDefault(QLocale::c());
        settings_ = std::make_unique<desk::Settings>();
        settings_->set_units(words::UnitSystem::metric);
        window_ = std::make_unique<desk::Window>(catalog_, *settings_, home_.path());
        window_->show();
    }

    void close_window()
    {
        window_.reset();
        settings_.reset();
    }

    template <class T> T* find(const char* name, QWidget* inside = nullptr) const
    {
        return (inside != nullptr ? inside : window_.get())->findChild<T*>(QLatin1String(name));
    }

    QTemporaryDir home_;
    desk::SharedCatalog catalog_;
    std::unique_ptr<desk::Settings> settings_;
    std::unique_ptr<desk::Window> window_;
};

} // namespace loam::test
