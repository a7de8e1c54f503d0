// SPDX-License-Identifier: BSL-1.0
/// @file
/// What holds the water: shapes, what displaces it, panels, beams and lids, the floor, the view,
/// and whether it leaks.
#pragma once

#include <tankwright/vessel/beam.hpp>
#include <tankwright/vessel/brace.hpp>
#include <tankwright/vessel/bulge.hpp>
#include <tankwright/vessel/cautions.hpp>
#include <tankwright/vessel/compound.hpp>
#include <tankwright/vessel/dimensions.hpp>
#include <tankwright/vessel/displacement.hpp>
#include <tankwright/vessel/fixings.hpp>
#include <tankwright/vessel/floor.hpp>
#include <tankwright/vessel/glass_sizes.hpp>
#include <tankwright/vessel/grains.hpp>
#include <tankwright/vessel/hydrostatic.hpp>
#include <tankwright/vessel/item.hpp>
#include <tankwright/vessel/joints.hpp>
#include <tankwright/vessel/leak_parts.hpp>
#include <tankwright/vessel/leak_test.hpp>
#include <tankwright/vessel/leak_test_planning.hpp>
#include <tankwright/vessel/lid.hpp>
#include <tankwright/vessel/lifting.hpp>
#include <tankwright/vessel/materials.hpp>
#include <tankwright/vessel/panel.hpp>
#include <tankwright/vessel/panel_edges.hpp>
#include <tankwright/vessel/panel_remarks.hpp>
#include <tankwright/vessel/plywood.hpp>
#include <tankwright/vessel/polygon.hpp>
#include <tankwright/vessel/rock.hpp>
#include <tankwright/vessel/sand.hpp>
#include <tankwright/vessel/shape.hpp>
#include <tankwright/vessel/view.hpp>
