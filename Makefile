# Every recipe that CI runs stands here; CI only calls them.

CARGO ?= cargo
PYTHON ?= python3
APP := target/debug/returnline-app
# One set of features everywhere: another set builds everything anew.
ALL := tauri/custom-protocol
SAMPLES := $(wildcard core/data/samples/*.json)
export CARGO_TERM_COLOR ?= auto

.PHONY: all demo test app bench package package-test app-figures reference-inference simulate second third ceiling disagree kills spoil lint core-test ui ui-test app-build app-test setup setup-ui types pictures drawings pages clean

all: demo

## The main job on the sample calls, without a screen; reports in out/.
demo: setup-build
	@mkdir -p out
	$(CARGO) build -q -p returnline-core --features cli --bin returnline
	@for call in $(SAMPLES); do \
	  name=$$(basename $$call .json); \
	  printf '\n==== %s ====\n' "$$name"; \
	  target/debug/returnline diagnose $$call --pdf out/$$name.pdf > out/$$name.txt || exit 1; \
	  sed '/^Why/,$$d' out/$$name.txt; \
	  printf 'Reasons, next checks and work plan: out/%s.txt\nService report: out/%s.pdf\n' $$name $$name; \
	done

## Everything: formatting, lints, the engine, the interface, the app in a real window.
test: setup lint core-test ui-test app-test

lint: setup ui
	$(CARGO) fmt --all --check
	$(CARGO) clippy --workspace --all-targets --features $(ALL),returnline-tests/window -- -D warnings

core-test: setup ui
	$(CARGO) build --workspace --features $(ALL) --bins
	$(CARGO) test --workspace --features $(ALL)
	@test -z "$$(git status --porcelain -- ui/src/types)" || { \
	  echo 'ui/src/types differs from the Rust types: run "make types" and commit'; \
	  git status --porcelain -- ui/src/types; exit 1; }

## Writes the TypeScript types of the boundary anew.
types: setup ui
	$(CARGO) test -q --workspace --features $(ALL) --lib export_bindings

setup-ui: setup
	cd ui && npm ci --no-audit --no-fund

ui/dist/index.html: $(shell find ui/src ui/text ui/index.html ui/package-lock.json ui/vite.config.ts -type f 2>/dev/null)
	$(MAKE) setup-ui
	cd ui && npm run build

ui: ui/dist/index.html

ui-test: ui
	cd ui && npm run check && npm test

app-build: ui
	$(CARGO) build --workspace --features $(ALL) --bins

app-test: app-build
	RETURNLINE_APP=$(CURDIR)/$(APP) $(CARGO) test --workspace \
	  --features $(ALL),returnline-tests/window --test app_window

## Measures the release app in its window: start and memory.
app-figures: ui
	$(CARGO) build --release --workspace --features $(ALL) --bins
	RETURNLINE_APP=$(CURDIR)/target/release/returnline-app $(CARGO) test --workspace \
	  --features $(ALL),returnline-tests/window --test app_window -- \
	  --ignored --nocapture --exact figures::start_and_memory
	@ls -l target/release/returnline-app target/release/returnline

## Opens the app.
app: app-build
	$(APP)

## Renews the drawings that the pictures of the screens show.
drawings: setup
	$(CARGO) build --workspace --features $(ALL) --example drawings
	target/debug/examples/drawings > ui/pictures/drawings.json
	target/debug/examples/drawings board > ui/pictures/board.json
	target/debug/examples/drawings calls > ui/pictures/calls.json

## Pictures of every screen to out/pictures, and whether each can be used by keys and ears.
pictures: ui
	cd ui && npm run pictures && npm run reach

## Writes every kind of report, usual and crowded, and a picture of each page, to out/pages.
pages: setup
	@rm -rf out/pages && mkdir -p out/pages
	$(CARGO) run -q -p returnline-tests --example sample_reports out/pages
	@for report in out/pages/*.pdf; do \
	  qpdf --check $$report > /dev/null || exit 1; \
	  pdftoppm -r 70 -png $$report $${report%.pdf} || exit 1; \
	done
	@ls out/pages/*.png | wc -l

## Kills a writing process again and again (RETURNLINE_KILLS times) and counts what is lost.
RETURNLINE_KILLS ?= 500
kills: setup-build
	RETURNLINE_KILLS=$(RETURNLINE_KILLS) $(CARGO) test --workspace --features $(ALL) --test durability -- --nocapture

## Feeds spoilt input to every reader, so many seconds each.
RETURNLINE_SPOIL_SECONDS ?= 120
spoil: setup-build
	RETURNLINE_SPOIL_SECONDS=$(RETURNLINE_SPOIL_SECONDS) $(CARGO) test --workspace --features $(ALL) --test any_input -- --nocapture --test-threads 2

## Measures; prints one table and asserts nothing. With RETURNLINE_PYTHON naming a Python
## that has the packages of tests/reference/requirements.txt, other libraries beside us.
bench: setup-build
	$(CARGO) build --release -p returnline-core -p returnline-tests \
	  --features returnline-core/cli --bin returnline --example bench_table
	target/release/examples/bench_table

# The app as a Debian package, of the release or (quicker made) the debug build.
PACKAGE_OF ?= release
PACKAGES = target/$(PACKAGE_OF)/bundle/deb

## Makes the Debian package.
package: ui
	@test -x ui/node_modules/.bin/tauri || $(MAKE) setup-ui
	$(CARGO) build --workspace --features $(ALL) --bins $(if $(filter release,$(PACKAGE_OF)),--release)
	rm -rf $(PACKAGES)
	cd src-tauri && ../ui/node_modules/.bin/tauri bundle --ci --bundles deb $(if $(filter debug,$(PACKAGE_OF)),--debug)
	@ls -l $(PACKAGES)/*.deb

## Installs that package, looks at what came, opens the app and removes it.
package-test: package
	CARGO="$(CARGO)" tests/package.sh $(PACKAGES)/*.deb

## Makes the reference of the shipped graph anew; needs tests/reference/requirements.txt.
reference-inference:
	@mkdir -p target/reference
	$(CARGO) run -q -p returnline-tests --example export_cases -- target/reference
	$(PYTHON) tests/reference/inference.py table target/reference \
	  tests/reference/tables/inference_shipped.json

CALLS ?= 1000
SEED ?= 1
## How good the answers are on simulated calls, as Markdown; asserts nothing.
simulate: setup-build
	$(CARGO) run --release -p returnline-tests --example simulate -- --calls $(CALLS) --seed $(SEED)

## The same on calls of simulators by other hands, before and after the recommended checks;
## no number of the graph was held against the third. Needs tests/reference/requirements.txt.
second third: setup-build
	rm -rf target/$@
	$(PYTHON) tests/reference/$@/write.py target/$@ --calls $(CALLS) --seed $(SEED)
	$(CARGO) run --release -q -p returnline-tests --example simulate -- --handed target/$@
	rm -rf target/$@-read
	$(PYTHON) tests/reference/$@/write.py target/$@-read --calls $(CALLS) --seed $(SEED) --readings 1
	$(CARGO) run --release -q -p returnline-tests --example simulate -- --handed target/$@ \
	  --fuller target/$@-read

LEARN ?= 24000
## How well a classifier does that was fitted to the same simulator: about what the
## evidence of a simulated call holds. Needs tests/reference/requirements.txt.
ceiling: setup-build
	@mkdir -p target/reference
	$(CARGO) run --release -q -p returnline-tests --example simulate -- --effort 0.5/1 \
	  --calls $(LEARN) --seed 5000000 --write target/reference/learn.jsonl
	$(CARGO) run --release -q -p returnline-tests --example simulate -- --effort 0.5/1 \
	  --calls 4000 --seed 9000000 --write target/reference/try.jsonl
	$(PYTHON) tests/reference/ceiling.py target/reference/learn.jsonl target/reference/try.jsonl

## Where two simulators by different hands speak against the graph alike: questions to
## the physics. Needs tests/reference/requirements.txt.
disagree: setup-build
	@mkdir -p target/reference
	rm -rf target/second
	$(CARGO) run --release -q -p returnline-core --features cli --bin returnline -- graph export \
	  > target/reference/graph.bif
	$(CARGO) run --release -q -p returnline-tests --example simulate -- --effort 1/1 \
	  --calls 8000 --seed 7000000 --write target/reference/own.jsonl
	$(PYTHON) tests/reference/second/write.py target/second --calls 8000 --seed 7
	$(CARGO) run --release -q -p returnline-tests --example simulate -- --handed target/second \
	  --write target/reference/second.jsonl
	$(PYTHON) tests/reference/disagree.py target/reference/graph.bif \
	  target/reference/own.jsonl target/reference/second.jsonl

setup:
	@.ci/setup

setup-build:
	@.ci/setup build

clean:
	$(CARGO) clean
	rm -rf ui/dist ui/node_modules out
