-- The lakeside field station: a boathouse whose hip roof runs on over an addition, a bunk cabin, a landing deck.
-- Usage: lua5.4 station.lua FOLDER      writes the job packet (index.html), every list as CSV, all.json, the drawings as SVG,
--                                       description.json, from which any language can take it up again,
--                                       and the frame as station.gltf, station.ifc and station.dxf

local frame = require "frame"
local folder = arg[1] or "."

local station = frame.site{
  name = "Lakeside field station", ground_snow_psf = 40, snow_basis = "50-year", code_edition = "2021", soil_psf = 2000,
  building_width_in = "16'", wind_wall_psf = 24,
}

local spf = { species = "SPF", grade = "No.2" }
local function with(fields, more)
  local made = {}
  for key, value in pairs(fields) do made[key] = value end
  for key, value in pairs(more) do made[key] = value end
  return made
end

-- Walls by their outside lines, the outside on the right going along; x, y of the start, x, y of the end.
local function wall(level, name, x0, y0, x1, y1, more)
  station:wall(with(with(spf, { level = level, name = name, from_x_in = x0, from_y_in = y0, to_x_in = x1, to_y_in = y1, size = "2x6" }),
    more or {}))
end

-- The boathouse: 24 ft by 16 ft, and an addition of 10 ft that ends at the old ice house, which stands.
station:level{ name = "boathouse", base_in = 0, height_in = "9'" }
local corner, butt = { start_end = "corner", end_end = "corner" }, { start_end = "butt", end_end = "butt" }
wall("boathouse", "boathouse, lake side", 0, 0, 173.5, 0, { start_end = "corner" })
wall("boathouse", "addition, west side", 168, 0, 168, -114.5)
wall("boathouse", "ice house wall", 168, -120, 288, -120, { existing = true })
wall("boathouse", "boathouse, east side", 288, -114.5, 288, 186.5, { end_end = "butt" })
wall("boathouse", "boathouse, forest side", 288, 192, 0, 192, corner)
wall("boathouse", "boathouse, west side", 0, 186.5, 0, 5.5, butt)
station:opening{ name = "boat door", wall = "boathouse, west side", at_in = "3' 6\"", width_in = "6' 6\"", head_in = "7' 2\"" }
station:opening{ name = "workbench window", wall = "boathouse, lake side", at_in = "5'", width_in = "4'", head_in = "7'", sill_in = 40 }
-- The stove's vent met a stud of this bearing wall: the stud is cut, and a header takes its place.
station:opening{ name = "stove vent", wall = "boathouse, forest side", at_in = 112.5, width_in = 14.5, head_in = 84, sill_in = 69.5, vent = true }

station:roof(with(spf, {
  name = "boathouse roof", level = "boathouse", slopes = { "6 in 12" }, overhang_in = 12, spacing_in = 16, ridge = "beam",
  corners = { { 0, 0 }, { 168, 0 }, { 168, -120 }, { 288, -120 }, { 288, 192 }, { 0, 192 } },
  kinds = { "hip", "hip", "wall", "hip", "hip", "hip" }, dead_psf = 12, wind_uplift_psf = 18, thermal = "unheated",
}))
-- The ice house rises 5 ft over the addition's roof: snow drifts against it.
station:snow_step{ name = "ice house", roof = "boathouse roof", edge = 2, height_in = "5'", upper_length_in = "18'" }
-- Posts up to the roof, under the ends of its ridges and where hips and the valley meet them.
for name, at in pairs{ ["ridge post 1"] = { 96, 96 }, ["ridge post 2"] = { 192, 96 }, ["ridge post 3"] = { 228, 60 } } do
  station:post{ name = name, level = "boathouse", x_in = at[1], y_in = at[2], bottom_in = 0, to_roof = true, size = "6x6", species = "DFL",
    grade = "No.1" }
end

-- The bunk cabin, on beams and posts.
local east = 480
station:level{ name = "bunk cabin", base_in = 30, height_in = "8' 1-1/8\"" }
wall("bunk cabin", "cabin, lake side", east, 0, east + 240, 0, corner)
wall("bunk cabin", "cabin, forest side", east + 240, 144, east, 144, corner)
wall("bunk cabin", "cabin, east side", east + 240, 5.5, east + 240, 138.5, butt)
wall("bunk cabin", "cabin, west side", east, 138.5, east, 5.5, butt)
station:opening{ name = "lake window", wall = "cabin, lake side", at_in = "6' 4\"", width_in = "6'", head_in = "6' 10\"", sill_in = 30 }
station:opening{ name = "cabin door", wall = "cabin, east side", at_in = "4'", width_in = 38, head_in = 82.5 }
station:floor(with(spf, { name = "cabin floor", level = "bunk cabin", from_x_in = east, from_y_in = 0, to_x_in = east + 240, to_y_in = 144,
  along = "y", live_psf = 40, dead_psf = 10 }))
-- A hatch down to the crawl space.
station:floor_opening{ name = "hatch", floor = "cabin floor", from_x_in = east + 150, from_y_in = 60, to_x_in = east + 180, to_y_in = 84 }
for name, y in pairs{ ["cabin beam, lake side"] = 2.75, ["cabin beam, forest side"] = 141.25 } do
  station:beam(with(spf, { name = name, level = "bunk cabin", from_x_in = east, from_y_in = y, to_x_in = east + 240, to_y_in = y,
    bearing_in = 5.5 }))
  for i = 0, 3 do
    station:post{ name = name .. ", post " .. i + 1, level = "bunk cabin", x_in = east + 2.75 + i * 234.5 / 3, y_in = y, bottom_in = -4,
      size = "6x6", species = "DFL", grade = "No.1" }
  end
end
station:roof(with(spf, {
  name = "cabin roof", level = "bunk cabin", slopes = { "7 in 12" }, overhang_in = 16, ridge = "board", dead_psf = 12,
  corners = { { east, 0 }, { east + 240, 0 }, { east + 240, 144 }, { east, 144 } }, kinds = { "hip", "gable", "hip", "gable" },
  wind_uplift_psf = 18, thermal = "unheated",
}))

-- The landing deck stands by itself in front of the cabin. The tops of its footings were measured from the datum: no two are alike.
station:level{ name = "landing deck", base_in = 26, height_in = "8'" }
station:floor{ name = "landing deck", level = "landing deck", from_x_in = east, from_y_in = -132, to_x_in = east + 168, to_y_in = -12, along = "y",
  live_psf = 40, dead_psf = 10, snow_psf = 40, sheathing_in = 1, deck = true, species = "Hem-Fir", grade = "No.2" }
-- Swimmers come up through a well in it, on a stair from the shore.
station:floor_opening{ name = "swimmers' well", floor = "landing deck", from_x_in = east + 40, from_y_in = -110, to_x_in = east + 78, to_y_in = -50 }
station:stair{ name = "swimmers' stair", opening = "swimmers' well", foot_in = -8, head = "high y", species = "Hem-Fir", grade = "No.2" }
local measured = { lake = { -8.25, -6.5, -7.875 }, cabin = { -3.5, -2.125, -4.75 } }
for side, y in pairs{ lake = -120, cabin = -24 } do
  station:beam{ name = "deck beam, " .. side .. " side", level = "landing deck", from_x_in = east, from_y_in = y, to_x_in = east + 168, to_y_in = y,
    species = "Hem-Fir", grade = "No.2", wet = true, bearing_in = 5.5 }
  for i, bottom in ipairs(measured[side]) do
    station:post{ name = "deck post, " .. side .. " side " .. i, level = "landing deck", x_in = east + 8 + (i - 1) * 76, y_in = y,
      bottom_in = bottom, size = "6x6", species = "DFL", grade = "No.1", wet = true }
  end
end

local stock = {}
for size, prices in pairs{
  ["2x4"] = { 3.90, 5.60, 7.40 }, ["2x6"] = { 6.20, 9.40, 12.60, 16.10 }, ["2x8"] = { 8.70, 13.10, 17.60, 22.40 },
  ["2x10"] = { 11.60, 17.60, 23.80, 30.60 }, ["2x12"] = { 15.20, 23.10, 31.40, 41.00 }, ["6x6"] = { 36.00, 54.00, 74.00 },
} do
  for i, price in ipairs(prices) do stock[#stock + 1] = { size = size, length_in = (4 + 4 * i) * 12, price = price } end
end
table.sort(stock, function(a, b) return a.size == b.size and a.length_in < b.length_in or a.size < b.size end)

local job = frame.framing{ site = station, stock = stock }
for check in job.checks() do
  print(string.format("%-52s %5.1f %%  %s%s", check.name, 100 * check.ratio, check.passes and "passes" or "FAILS",
    check.code_passes == nil and "" or check.code_passes and "; the code's table allows it" or "; NOT BY THE CODE'S TABLE"))
end
print(string.format("%d checks, %d fail; %d sticks, %s; %d boards for %.2f; balance of loads %.1e", job.check_total, job.failed_total,
  job.stick_total, job.fits and "all fit" or "NOT ALL FIT", job.boards_used, job.cost, job.balance))

-- May this stud go? The library says who takes its load.
local gone = frame.stud_removal{ site = station, wall = "boathouse, forest side", at_in = "13' 4\"" }
print(string.format("a stud of the forest side: it carries %.0f lb; without it its neighbours carry %.0f and %.0f lb, the plates use %.0f %%: %s",
  gone.load_lb, gone.left_after_lb, gone.right_after_lb, 100 * gone.plate_ratio, gone.passes and "it may go, shored first" or "it may not go"))

os.execute('mkdir -p "' .. folder .. '"')
job:packet():write(folder)
station:write_json(folder .. "/description.json")
-- The frame for other programs, in open standards.
job:write_gltf(folder .. "/station.gltf")
job:write_ifc(folder .. "/station.ifc")
job:write_dxf(folder .. "/station.dxf")
