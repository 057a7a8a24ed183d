-- Speed of the Lua binding: joist checks one by one, and what that adds to the same rows in one call.
local frame = require "frame"

local CALLS = 50000

local function one_by_one()
  local check = frame.joist_check
  for _ = 1, CALLS do
    check{ use = "floor", size = "2x10", species = "SPF", grade = "No.2", bearing_in = 1.5, span_in = 140, spacing_in = 16,
      live_psf = 40, dead_psf = 10, snow_psf = 0 }
  end
end

local spans = {}
for i = 1, CALLS do spans[i] = 140 end
local function rows()
  frame.batch("joist_check", { use = "floor", size = "2x10", species = "SPF", grade = "No.2", bearing_in = 1.5, span_in = spans,
    spacing_in = 16, live_psf = 40, dead_psf = 10, snow_psf = 0 })
end

local function best(run)
  local least = math.huge
  for _ = 1, 5 do
    local begun = os.clock()
    run()
    least = math.min(least, os.clock() - begun)
  end
  return least / CALLS * 1e9
end

local ns, row_ns = best(one_by_one), best(rows)
print(string.format("%-42s %9.1f ns %9.2f million/s", "joist_check, Lua, one by one", ns, 1e3 / ns))
print(string.format("%-42s %9.1f ns over a row of the batch (goal 1000)", "joist_check, what a call through Lua adds", ns - row_ns))
