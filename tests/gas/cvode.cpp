#include "tests/gas/cvode.h"

#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <stdexcept>
#include <string>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>
#include <sunnonlinsol/sunnonlinsol_fixedpoint.h>

namespace lobewright::testing {

struct Cvode::Handles {
    SUNContext context = nullptr;
    void* solver = nullptr;
    N_Vector state = nullptr, absolute = nullptr;
    SUNMatrix matrix = nullptr;
    SUNLinearSolver linear = nullptr;
    SUNNonlinearSolver fixedPoint = nullptr;
    double relative = 0.0;
    bool started = false;
    ~Handles() {
        CVodeFree(&solver);
        SUNLinSolFree(linear);
        SUNNonlinSolFree(fixedPoint);
        SUNMatDestroy(matrix);
        N_VDestroy(state);
        N_VDestroy(absolute);
        SUNContext_Free(&context);
    }
};

struct CvodeCallbacks {
    static int rates(double x, N_Vector y, N_Vector dy, void* self) {
        Cvode& cvode = *static_cast<Cvode*>(self);
        ++cvode.evaluations_;
        cvode.rates_(x, N_VGetArrayPointer(y), N_VGetArrayPointer(dy));
        return 0;
    }
    static int roots(double x, N_Vector y, double* g, void* self) {
        static_cast<Cvode*>(self)->roots_(x, N_VGetArrayPointer(y), g);
        return 0;
    }
};

namespace {

void require(int flag, const char* what) {
    if (flag < 0) {
        throw std::runtime_error(std::string("CVODE: ") + what + " failed with " +
                                 std::to_string(flag));
    }
}

} // namespace

Cvode::Cvode(Rates rates, double relative, std::vector<double> absolute, Method method)
    : handles_(std::make_unique<Handles>()), rates_(std::move(rates)) {
    const auto size = static_cast<sunindextype>(absolute.size());
    Handles& h = *handles_;
    require(SUNContext_Create(nullptr, &h.context), "context");
    h.state = N_VNew_Serial(size, h.context);
    h.absolute = N_VNew_Serial(size, h.context);
    std::copy(absolute.begin(), absolute.end(), N_VGetArrayPointer(h.absolute));
    h.solver = CVodeCreate(method == Method::stiff ? CV_BDF : CV_ADAMS, h.context);
    if (method == Method::stiff) {
        h.matrix = SUNDenseMatrix(size, size, h.context);
        h.linear = SUNLinSol_Dense(h.state, h.matrix, h.context);
    } else {
        h.fixedPoint = SUNNonlinSol_FixedPoint(h.state, 0, h.context);
    }
    h.relative = relative;
}

Cvode::~Cvode() = default;

void Cvode::watch(int count, Roots roots) {
    roots_ = std::move(roots);
    rootCount_ = count;
    rootsFound_.assign(static_cast<std::size_t>(count), 0);
}

double Cvode::integrate(double x, double stop, std::vector<double>& y,
                        const std::function<void(double, const double*)>& onStep) {
    Handles& h = *handles_;
    double* state = N_VGetArrayPointer(h.state);
    std::copy(y.begin(), y.end(), state);
    if (!h.started) {
        require(CVodeInit(h.solver, CvodeCallbacks::rates, x, h.state), "start");
        require(CVodeSetUserData(h.solver, this), "user data");
        require(CVodeSVtolerances(h.solver, h.relative, h.absolute), "tolerances");
        if (h.fixedPoint) {
            require(CVodeSetNonlinearSolver(h.solver, h.fixedPoint), "fixed-point solver");
        } else {
            require(CVodeSetLinearSolver(h.solver, h.linear, h.matrix), "linear solver");
        }
        require(CVodeSetMaxNumSteps(h.solver, 2000000), "step limit");
        if (rootCount_ > 0) {
            require(CVodeRootInit(h.solver, rootCount_, CvodeCallbacks::roots), "roots");
            CVodeSetNoInactiveRootWarn(h.solver);
        }
        h.started = true;
    } else {
        require(CVodeReInit(h.solver, x, h.state), "restart");
    }
    require(CVodeSetStopTime(h.solver, stop), "stop");
    double at = x;
    int flag = CV_SUCCESS;
    std::fill(rootsFound_.begin(), rootsFound_.end(), 0);
    while (flag == CV_SUCCESS && at < stop) {
        flag = CVode(h.solver, stop, h.state, &at, CV_ONE_STEP);
        require(flag, "step");
        if (onStep) {
            onStep(at, state);
        }
    }
    if (flag == CV_ROOT_RETURN) {
        CVodeGetRootInfo(h.solver, rootsFound_.data());
    }
    std::copy_n(state, y.size(), y.begin());
    return at;
}

} // namespace lobewright::testing
