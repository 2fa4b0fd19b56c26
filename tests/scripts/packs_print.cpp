// Reads instances "<amount> <packs> <yield> <price> <yield> <price> ..." line by line, amounts in litres and prices in
// minor units, and prints for each the choice of packs by every aim as "<price> <packs> <left over>", separated by " |
// ".
#include <cstdio>
#include <iostream>
#include <sstream>
#include <string>

#include "core/buying/pack_choice.hpp"

namespace {

using namespace loam;
using namespace loam::buying;

bool print(const std::string& line)
{
    std::istringstream words(line);
    double amount = 0.0;
    std::size_t count = 0;
    words >> amount >> count;
    std::vector<PackCandidate> packs(count);
    for (PackCandidate& pack : packs) {
        double yield = 0.0;
        words >> yield >> pack.price_minor;
        pack.amount = exactly(yield);
    }
    if (!words) {
        std::fprintf(stderr, "not an instance: %s\n", line.c_str());
        return false;
    }
    const char* between = "";
    for (const Aim aim : {Aim::cheapest, Aim::fewest_packs, Aim::least_left_over}) {
        const auto choice = choose_packs(amount, packs, aim);
        if (!choice) {
            std::printf("%sno choice", between);
        } else {
            std::printf("%s%lld %lld %.6f", between, static_cast<long long>(choice->price_minor),
                        static_cast<long long>(choice->packs), choice->left_over.low);
        }
        between = " | ";
    }
    std::printf("\n");
    return true;
}

} // namespace

int main()
{
    std::string line;
    bool good = true;
    while (good && std::getline(std::cin, line)) {
        good = print(line);
    }
    return good ? 0 : 1;
}
