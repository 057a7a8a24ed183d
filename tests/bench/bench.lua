-- Speed of the Lua binding: joist checks one by one.
local frame = require "frame"

local CALLS = 50000

local function one_by_one()
  local check = frame.joist_check
  for _ = 1, CALLS do
    check{ use = "floor", size = "2x10", species = "SPF", grade = "No.2", bearing_in = 1.5, span_in = 140, spacing_in = 16,
      live_psf = 40, dead_psf = 10, snow_psf = 0 }
  end
end

local least = math.huge
for _ = 1, 5 do
  local begun = os.clock()
  one_by_one()
  least = math.min(least, os.clock() - begun)
end
local ns = least / CALLS * 1e9
print(string.format("%-42s %9.1f ns %9.2f million/s", "joist_check, Lua, one by one", ns, 1e3 / ns))
