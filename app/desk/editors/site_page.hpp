// Room, electricity and stands.
#pragma once

#include "app/desk/editors/page.hpp"

namespace loam::desk {

class SitePage : public Page {
    Q_OBJECT

public:
    SitePage(FormState& state, QWidget* parent);

private:
    void build_room();
    void build_room_case(const QString& heading_text, const char* key, plan::RoomCase plan::Room::*season);
    void build_electricity();
    void build_water();
    void build_circuits();
    void build_strips();
    void build_stands();
};

} // namespace loam::desk
